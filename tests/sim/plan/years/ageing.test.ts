import { describe, expect, it } from "vitest";
import { agedPack, packUse, YEARS } from "../../../../sim/plan/years/ageing.ts";
import { demoJob } from "../../../support/demoJob.ts";

const nickel = demoJob(0);
const iron = demoJob(1);
const standing = { standing_frac: 0.5, temperature_K: 298.15, depth_frac: 0, drivingDays: 0, rate: 0.3 };

describe("a pack after some years", () => {
  // Calendar alone, ten years at 25 degC half full: 13.5, 13.4 and 17.3 % by the three papers; the nickel cell at its own voltage half full.
  it("stood half full at 25 degC for ten years loses what the papers' laws say", () => {
    const ten = (job: typeof nickel) => agedPack(job, job.packs[0], standing)[2].capacity_frac;
    expect(ten(nickel).low).toBeCloseTo(1 - 0.172858, 4);
    expect(Math.abs(1 - ten(nickel).high - 0.135)).toBeLessThan(0.01);
    expect(ten(iron).low).toBeCloseTo(1 - 0.13445, 4);
    expect(ten(iron).high).toBeCloseTo(ten(iron).low, 12);
  });

  it("is new at first, and loses with years, warmth, charge and depth", () => {
    for (const job of [nickel, iron]) {
      const [pack] = job.packs;
      const use = { ...standing, depth_frac: 0.5, drivingDays: 240 };
      const aged = agedPack(job, pack, use);
      expect(aged.map(({ years }) => years)).toEqual([...YEARS]);
      expect(aged[0].capacity_frac).toEqual({ low: 1, high: 1 });
      const low = (changes: Partial<typeof use>) => agedPack(job, pack, { ...use, ...changes })[2].capacity_frac.low;
      expect(aged[3].capacity_frac.low).toBeLessThan(aged[1].capacity_frac.low);
      expect(low({ temperature_K: 308.15 })).toBeLessThan(low({}));
      expect(low({ standing_frac: 0.95 })).toBeLessThan(low({}));
      expect(low({ depth_frac: 0.8 })).toBeLessThan(low({}));
    }
  });
});

it("is as warm as the year's mean on its usual days: the twelve months by twelve", () => {
  const year = { months_degC: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 24] };
  const use = packUse({ ...nickel, year: { ...nickel.year, ...year } } as typeof nickel, nickel.packs[0], 100, 40);
  expect(use.temperature_K).toBeCloseTo(7.5 + 273.15, 9);
});

describe("ten years of 240 days, each half of the charge out and in again, half full at 25 degC, by the papers' laws", () => {
  const use = { ...standing, depth_frac: 0.5, drivingDays: 240 };
  it("leave iron phosphate 79.40 to 82.18 %", () => {
    // Standing 13.445 %; 1200 full cycles at 0.3 C: 4.373 % by Naumann, 7.151 % by Wang with 2.2 Ah a cycle.
    const { low, high } = agedPack(iron, iron.packs[0], use)[2].capacity_frac;
    expect(low).toBeCloseTo(0.79404, 5);
    expect(high).toBeCloseTo(0.82182, 5);
  });
  it("leave nickel that stands and cycles at 3.7 V 66.83 to 80.11 %, with nine tenths more resistance", () => {
    // Schmalstieg: 13.467 % by standing, 19.700 % by 4920 Ah of a cell of 2.05 Ah. Xu: 19.886 % by 2400 cycles.
    const flat = { ...nickel.module, openCircuit: { soc_frac: [0, 1], cell_V: [3.7, 3.7] } };
    const [, , ten] = agedPack({ ...nickel, module: flat }, nickel.packs[0], use);
    expect(ten.capacity_frac.low).toBeCloseTo(0.66834, 5);
    expect(ten.capacity_frac.high).toBeCloseTo(0.80114, 5);
    expect(ten.resistance_ratio).toBeCloseTo(1.89899, 5);
  });
});

it("takes a pack's use from its days: depth by its range, charged every night, as warm as the year's mean", () => {
  const [pack] = nickel.packs;
  const window = pack.ceiling_frac - pack.floor_frac;
  const use = packUse(nickel, pack, 2 * nickel.usualDay_km, 30);
  expect(use.depth_frac).toBeCloseTo(window / 2, 12);
  expect(use.standing_frac).toBeCloseTo(pack.ceiling_frac - window / 4, 12);
  expect(use.rate).toBeCloseTo((window * 30) / (2 * nickel.usualDay_km), 12);
  expect(packUse(nickel, pack, nickel.usualDay_km / 2, 30).depth_frac).toBe(window);
});
