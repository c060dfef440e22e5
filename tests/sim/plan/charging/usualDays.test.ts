import { describe, expect, it } from "vitest";
import { chargePlan } from "../../../../sim/plan/charging/chargePlan.ts";
import { usualDays } from "../../../../sim/plan/charging/usualDays.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

/** 4 kWh for the 40 km of the day; a road of 10 km in twenty minutes. */
const candidate = inventedCandidate(20);
const road = { distance_km: 10, duration_s: 1200 };
function daysOf(changes: Changes, supplies: ReturnType<typeof socketOf>[], of = candidate) {
  const job = { ...bareJob({ ...flatPack(20), ...changes }), supplies };
  return usualDays(job, chargePlan(job, [of]), road);
}
const hours = { from: "18:00", to: "8:00" };

describe("the usual day of a pack", () => {
  it("drives as often over the road as the day is long, and charges at the first supply", () => {
    const [day] = daysOf({}, [socketOf(10, { hours }), socketOf(32, { hours: { from: "12:00", to: "13:00" } })]);
    // Four times twenty minutes, half of them from eight o'clock on; a fifth of the pack is back after 4 kWh at 2.3 kW.
    expect(day?.hour_h.slice(0, 4)).toEqual([8, expect.closeTo(8 + 2 / 3, 9), expect.closeTo(18 - 2 / 3, 9), 18]);
    expect(day?.home_frac).toBeCloseTo(0.8, 6);
    expect(day?.soc_frac[0]).toBe(1);
    expect(day?.hour_h.at(-2)).toBeCloseTo(18 + 4 / 2.3, 3);
  });
  it("has a household socket where no supply is named", () => {
    expect(daysOf({}, [])[0]).toMatchObject({ leaves_h: 8, home_h: 18, isFull: true });
  });
  it("is none where the pack is not charged, or the car does not drive", () => {
    expect(daysOf({ environment: { temperature_degC: -5 } }, [socketOf(10)])).toEqual([undefined]);
    expect(daysOf({}, [socketOf(10)], inventedCandidate(20, { distance_km: 0 }))).toEqual([undefined]);
  });

  it("is none where the pack is empty before the car is home", () => {
    const job = { ...bareJob(flatPack(20)), supplies: [socketOf(10)], usualDay_km: 201 };
    expect(usualDays(job, chargePlan(job, [candidate]), road)).toEqual([undefined]);
  });

  it("is none where the driving takes longer than a day has hours: 720 km at 30 km/h are just one", () => {
    const daysOver = (usualDay_km: number) => {
      const job = { ...bareJob(flatPack(100)), supplies: [socketOf(10)], usualDay_km };
      return usualDays(job, chargePlan(job, [candidate]), road);
    };
    expect(daysOver(720)[0]).toMatchObject({ leaves_h: 8, home_h: 32, isFull: false });
    expect(daysOver(721)).toEqual([undefined]);
  });
});
