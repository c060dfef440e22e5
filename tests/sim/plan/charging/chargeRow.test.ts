import { expect, it } from "vitest";
import { chargesFromEmpty } from "../../../../sim/plan/charging/chargeFromEmpty.ts";
import { chargeRow, winterEnergy_ratio } from "../../../../sim/plan/charging/chargeRow.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

/** 40 km a day, 100 Wh/km from the cells, 2.3 kW at the supply. */
function rowOf(energy_kWh: number, price_perkWh?: number) {
  const supply = socketOf(10, price_perkWh === undefined ? {} : { price_perkWh });
  const job = { ...bareJob(flatPack(energy_kWh)), supplies: [supply] };
  const [[fromEmpty]] = chargesFromEmpty(job);
  return chargeRow(job, fromEmpty, inventedCandidate(20));
}

it("refills what a day takes, and from empty all that the pack holds", () => {
  const { usualDay, emptyToFull } = rowOf(20);
  expect(usualDay).toMatchObject({ stored_kWh: expect.closeTo(4, 6), isMoreThanPack: false });
  expect(usualDay?.from_frac).toBeCloseTo(0.8, 6);
  expect(emptyToFull?.time_h).toBeCloseTo(20 / 2.3, 3);
  expect(emptyToFull).not.toHaveProperty("cost");
});

it("refills the whole pack after a day that is more than it", () => {
  const { usualDay, emptyToFull } = rowOf(3);
  expect(usualDay).toMatchObject({ isMoreThanPack: true, from_frac: 0, time_h: emptyToFull?.time_h });
});

it("costs what the wall gives, where there is a price", () => {
  const { emptyToFull } = rowOf(20, 0.5);
  expect(emptyToFull?.cost).toBeCloseTo(0.5 * (emptyToFull?.wall_kWh ?? 0), 12);
});

it("takes a winter's kilometre as it was driven, or by the allowance", () => {
  const job = bareJob();
  expect(winterEnergy_ratio(job, inventedCandidate(20))).toBe(job.allowance.winter_ratio);
  // 100 Wh/km today.
  const winter = { range_km: 50, perMetre_J: 540 } as const;
  const driven = inventedCandidate(20, { conditions: { winter, others: [] } } as object);
  expect(winterEnergy_ratio(job, driven)).toBeCloseTo(1.5, 12);
});
