import { describe, expect, it } from "vitest";
import conditions from "../../../web/sections/conditions.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(0);
const values = sectionValues(job);
const tablesOf = (result: ReturnType<typeof conditions.compute>) =>
  [...conditions.plot(result, drawing(640))].flatMap((each) => ("rows" in each ? [each] : []));
const result = conditions.compute(values);

describe("the working on conditions", () => {
  it("has each pack in each condition, and how much more than today the chosen one takes in each", () => {
    const [byPack, byCondition] = tablesOf(result);
    expect(byPack.rows.map(([name]) => name)).toEqual(job.packs.map(({ name }) => name));
    expect(byCondition.rows[0].slice(0, 3)).toEqual(["new, today", expect.stringMatching(/Wh\/km$/), "× 1.00"]);
    const ratios = byCondition.rows.map((row) => Number(row[2].slice(2)));
    expect(Math.min(...ratios.slice(1))).toBeGreaterThan(1);
  });

  it("has what the laws of ageing leave with the range in winter, which falls with the years", () => {
    const ageing = tablesOf(result)[2];
    expect(ageing.rows.map(([after]) => after)).toEqual(["new", "5 years", "10 years", "15 years"]);
    const least = ageing.rows.map((row) => Number.parseInt(row[3], 10));
    expect(least).toEqual([...least].sort((a, b) => b - a));
    expect(least[0]).toBe(Math.floor(values.packLife?.winter[0].low_km ?? Number.NaN));
  });

  it("ends its sentence with how long the usual day is done in winter; one line says the ranges", () => {
    expect(conditions.sentence(result)).toMatch(/^At 4 °C, 13 kWh goes .* By the published laws of ageing 13 kWh /);
    expect(conditions.sentence(result)).toMatch(/Never mix aged and new modules in one string/);
    expect(conditions.summary?.(result)).toMatch(/^13 kWh: winter [\d.]+\skm, at ten years [\d.]+\skm$/);
  });

  it("says nothing of years while they are not driven", () => {
    const closed = conditions.compute({ ...values, packLife: undefined });
    expect(conditions.sentence(closed)).not.toMatch(/laws of ageing/);
    expect(tablesOf(closed)[2].columns).toHaveLength(3);
  });

  it("says of a pack without a range that it has none, in place of nought and of ratios to nought", () => {
    const endless = { range_km: 0, rangeEnd: "endless" as const };
    const judged = values.judged.map((each) => {
      const winters = Object.entries(each.conditions ?? {}).map(([key, drive]) => [
        key,
        Array.isArray(drive) ? drive : { ...drive, ...endless },
      ]);
      return { ...each, ...endless, battery_Whpkm: 0, conditions: Object.fromEntries(winters) };
    });
    const none = conditions.compute({ ...values, judged, packLife: undefined });
    expect(conditions.sentence(none)).toBe(
      "13 kWh has no range on this road today, so that nothing can be said of what winter makes of it.",
    );
    expect(conditions.summary?.(none)).toBe("13 kWh: winter draws nothing, at ten years draws nothing");
    expect(JSON.stringify(tablesOf(none))).not.toMatch(/NaN|Infinity/);
  });

  it("says that winter is a factor where the job knows it by one", () => {
    const { conditions: _conditions, ...plain } = job;
    const factor = conditions.compute(sectionValues({ ...plain, allowance: { winter_ratio: 1.33, aged_frac: 0.75 } }));
    expect(conditions.sentence(factor)).toMatch(/^Winter is taken as 1\.33 times today's energy/);
    expect(conditions.summary?.(factor)).toBe("winter a factor of 1.33");
  });
});
