import { describe, expect, it } from "vitest";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { agedAfter, LIFE_years, packUse, YEARS } from "../../../../sim/plan/years/ageing.ts";
import { packLife } from "../../../../sim/plan/years/packLife.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const WINTER_ratio = 1.25;
const SPEED_mps = 2;
const trace = steadyTrace(SPEED_mps, 1000, 1);

/** Rolling drag of 137.34 N alone and 4 kWh that are all voltage: 104.8 km on a charge, and with less capacity as much less. */
function bareOf(usualDay_km: number): Job {
  const tyres = { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false };
  return {
    ...bareJob({ ...flatPack(4), vehicle: { tyres } }),
    usualDay_km,
    allowance: { winter_ratio: WINTER_ratio, aged_frac: 0.75 },
  };
}
const FRESH_km = (4 * 3600) / (0.01 * 1400 * 9.81);

/** What the laws leave of that car's winter range, a straight share of the range when new. */
function byShare_km(job: Job, years: number) {
  const use = packUse(job, job.packs[0], FRESH_km, SPEED_mps * 3.6);
  const { low, high } = agedAfter(job, job.packs[0], use, years).capacity_frac;
  return { low: (FRESH_km * low) / WINTER_ratio, high: (FRESH_km * high) / WINTER_ratio };
}

describe("the life of a pack whose range is its energy over one drag", () => {
  it("has the share of its winter range that the laws leave, in each year of the table", () => {
    const job = bareOf(40);
    const life = packLife(job, 0, trace);
    expect(life?.winter.map(({ years }) => years)).toEqual([...YEARS]);
    for (const { years, low_km, high_km } of life?.winter ?? []) {
      const { low, high } = byShare_km(job, years);
      // A start takes 2.8 kJ of the 14.4 MJ, one each kilometre or two of drag at 137 J a metre: 1 % of the way at most.
      expect(Math.abs(low_km / low - 1)).toBeLessThan(0.011);
      expect(Math.abs(high_km / high - 1)).toBeLessThan(0.011);
    }
  });

  it("ends after the first year in which that share is shorter than the day, by either law", () => {
    const counted: number[] = [];
    for (const day_km of [45, 55, 60, 65, 70]) {
      const job = bareOf(day_km);
      // Driven it is the share or up to 1.1 % less, for the starts: the year lies between those that both say, most often the same.
      const first = (end: "low" | "high", part: number) => {
        const years = Array.from({ length: LIFE_years + 1 }, (_, i) => i);
        return years.find((each) => part * byShare_km(job, each)[end] < day_km) ?? LIFE_years + 1;
      };
      const life = packLife(job, 0, trace);
      const found = { low: life?.earliest_years, high: life?.latest_years };
      for (const end of ["low", "high"] as const) {
        const year = found[end] ?? LIFE_years + 1;
        expect(year).toBeGreaterThanOrEqual(first(end, 0.989));
        expect(year).toBeLessThanOrEqual(first(end, 1));
        counted.push(year);
      }
    }
    // Early, late and beyond are all among them.
    expect(Math.min(...counted)).toBeLessThan(5);
    expect(Math.max(...counted)).toBe(LIFE_years + 1);
  });

  it("ends before it begins where the day is too long when new, and not at all where it is short", () => {
    const long = packLife(bareOf(90), 0, trace);
    expect([long?.earliest_years, long?.latest_years]).toEqual([0, 0]);
    const short = packLife(bareOf(5), 0, trace);
    expect(short).not.toHaveProperty("earliest_years");
    expect(short).not.toHaveProperty("latest_years");
  });
});

describe("new modules", () => {
  const tuner = demoJob(0);
  const road = roadTrace(drivenRoad(tuner), cycleTexts);

  it("are as many as the layout has, weigh what they do without boxes, and cost what the job says of cells", () => {
    const index = tuner.packs.findIndex(({ name }) => name === "13 kWh");
    const { seriesModules, parallelModules } = tuner.packs[index];
    const { modules } = packLife(tuner, index, road) ?? {};
    expect(modules).toMatchObject({
      count: seriesModules * parallelModules,
      layout: `${seriesModules}s${parallelModules}p`,
      strings: parallelModules,
      mass_kg: seriesModules * parallelModules * tuner.module.mass_kg,
    });
    // Full: every cell at its upper voltage.
    expect(modules?.full_V).toBeCloseTo(seriesModules * tuner.module.seriesCells * tuner.module.cellMax_V, 6);
    expect(modules?.cost?.high).toBeGreaterThan(modules?.cost?.low ?? 0);
  });

  it("of a pack given whole have no count, and no price where the job has none", () => {
    const { costs: _costs, ...free } = tuner;
    const { cellPrice: _price, ...like } = tuner.packs[0];
    const whole = { ...like, whole: { energy_kWh: 13, nominal_V: 111, mass_kgpkWh: 10 } };
    const { modules } = packLife({ ...free, packs: [whole] }, 0, road) ?? {};
    expect(modules).toMatchObject({ strings: 1 });
    expect(modules?.mass_kg).toBeCloseTo(130, 6);
    expect(modules).not.toHaveProperty("count");
    expect(modules).not.toHaveProperty("cost");
  });
});

it("is driven in the job's winter where it has one: shorter by a colder one, whatever the factor", () => {
  const tuner = demoJob(0);
  const road = roadTrace(drivenRoad(tuner), cycleTexts);
  const at = (temperature_degC: number, winter_ratio: number) => {
    const winter = tuner.conditions?.winter;
    if (!winter || !tuner.conditions) throw new Error("the demo has no driven winter");
    const conditions = { ...tuner.conditions, winter: { ...winter, temperature_degC } };
    const job = { ...tuner, conditions, allowance: { ...tuner.allowance, winter_ratio } };
    return packLife(job, 1, road)?.winter[0].low_km ?? Number.NaN;
  };
  expect(at(-10, 1)).toBeLessThan(at(5, 1));
  expect(at(5, 1.4)).toBe(at(5, 1));
});
