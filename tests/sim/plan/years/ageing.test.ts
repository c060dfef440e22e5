import { describe, expect, it } from "vitest";
import { inventedYear } from "../../../../shared/job/inventedYear.ts";
import { agedPack, packUse, YEARS } from "../../../../sim/plan/years/ageing.ts";
import { demoJob } from "../../../support/demoJob.ts";

const nickel = demoJob(0);
const iron = demoJob(1);
const standing = { standing_frac: 0.5, temperature_K: 298.15, depths_frac: [] as number[], rate: 0.3 };
const daysOf = (count: number, depth_frac: number) => Array.from({ length: count }, () => depth_frac);

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
      const use = { ...standing, depths_frac: daysOf(240, 0.5) };
      const aged = agedPack(job, pack, use);
      expect(aged.map(({ years }) => years)).toEqual([...YEARS]);
      expect(aged[0].capacity_frac).toEqual({ low: 1, high: 1 });
      const low = (changes: Partial<typeof use>) => agedPack(job, pack, { ...use, ...changes })[2].capacity_frac.low;
      expect(aged[3].capacity_frac.low).toBeLessThan(aged[1].capacity_frac.low);
      expect(low({ temperature_K: 308.15 })).toBeLessThan(low({}));
      expect(low({ standing_frac: 0.95 })).toBeLessThan(low({}));
      expect(low({ depths_frac: daysOf(240, 0.8) })).toBeLessThan(low({}));
    }
  });
});

it("is as warm as the year's mean on its usual days: the twelve months by twelve", () => {
  const year = { months_degC: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 24] };
  const use = packUse({ ...nickel, year: { ...nickel.year, ...year } } as typeof nickel, nickel.packs[0], 100, 40);
  expect(use.temperature_K).toBeCloseTo(7.5 + 273.15, 9);
});

describe("ten years of 240 days, each half of the charge out and in again, half full at 25 degC, by the papers' laws", () => {
  const use = { ...standing, depths_frac: daysOf(240, 0.5) };
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

describe("120 days of a fifth of the charge and 120 of four fifths, half full at 25 degC, for ten years", () => {
  const use = { ...standing, depths_frac: [...daysOf(120, 0.2), ...daysOf(120, 0.8)] };
  it("leave iron phosphate by Wang what as much throughput leaves, by Naumann what each depth costs by its share of it", () => {
    // 1200 full cycles, a fifth of them at depth 0.2, the rest at 0.8: 4.0253 (DOD - 0.6)^3 + 1.0923 is 0.83468 and 1.12450, on average
    // 1.06654; (0.0630 * 0.3 + 0.0971) * 1.06654 * sqrt(1200) = 4.2858 %. Standing 13.445 %, Wang 7.151 %.
    const { low, high } = agedPack(iron, iron.packs[0], use)[2].capacity_frac;
    expect(low).toBeCloseTo(0.79404, 5);
    expect(high).toBeCloseTo(1 - 0.13445 - 0.042858, 5);
  });
  it("leave nickel by Xu what the stresses of its cycles add up to, by Schmalstieg what each depth costs by its share", () => {
    const flat = { ...nickel.module, openCircuit: { soc_frac: [0, 1], cell_V: [3.7, 3.7] } };
    const [, , ten] = agedPack({ ...nickel, module: flat }, nickel.packs[0], use);
    // S_d(0.2) = 5.2003e-6, S_d(0.8) = 2.97977e-5; f = 4.14e-10 * 315 360 000 + 1200 * 3.49980e-5 = 0.172557: 20.694 %.
    expect(ten.capacity_frac.high).toBeCloseTo(1 - 0.20694, 4);
    // b is straight in depth: that of 0.2 * 0.2 + 0.8 * 0.8 = 0.68, at 4920 Ah. 13.467 % standing, b = 7.348e-3 * 0.033^2 + 7.6e-4 + 4.081e-3 * 0.68.
    const b = 7.348e-3 * 0.033 ** 2 + 7.6e-4 + 4.081e-3 * 0.68;
    expect(ten.capacity_frac.low).toBeCloseTo(1 - 0.13467 - b * Math.sqrt(4920), 4);
  });
});

describe("a pack's use", () => {
  const [pack] = nickel.packs;
  const window = pack.ceiling_frac - pack.floor_frac;
  const { longestDay_km: _longest, ...plain } = nickel;
  const year = { ...inventedYear, daysAWeek: 7, holidayWeeks: 0 };

  it("is that of its days: depth by its range, charged every night, once a driving day", () => {
    const use = packUse({ ...plain, year }, pack, 2 * nickel.usualDay_km, 30);
    expect(use.depths_frac).toEqual(daysOf(365, window / 2));
    expect(use.standing_frac).toBeCloseTo(pack.ceiling_frac - window / 4, 12);
    expect(use.rate).toBeCloseTo((window * 30) / (2 * nickel.usualDay_km), 12);
  });

  it("empties it once on a day beyond its range", () => {
    expect(packUse({ ...plain, year }, pack, nickel.usualDay_km / 2, 30).depths_frac).toEqual(daysOf(365, window));
  });

  it("has the days of the client's list in the place of the usual one, and the longest days", () => {
    // Half of them a quarter of the range, half three quarters: the upper is the middle one of two, and so the usual day.
    const ofList = { ...plain, usualDay_km: 75, year: { ...year, daysDriven_km: [25, 75] } };
    const { depths_frac, standing_frac } = packUse(ofList, pack, 100, 30);
    const short = depths_frac.filter((depth) => Math.abs(depth - window / 4) < 1e-12).length;
    const long = depths_frac.filter((depth) => Math.abs(depth - 0.75 * window) < 1e-12).length;
    expect([short + long, Math.abs(short - long)]).toEqual([365, 1]);
    expect(standing_frac).toBeCloseTo(pack.ceiling_frac - (window * (25 * short + 75 * long)) / (100 * 365 * 2), 12);
    const withLong = packUse({ ...ofList, longestDay_km: 100, longestDaysAYear: 10 }, pack, 100, 30);
    expect(withLong.depths_frac.filter((depth) => depth === window)).toHaveLength(10);
  });
});
