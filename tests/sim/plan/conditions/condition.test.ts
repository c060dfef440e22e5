import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import type { Weather } from "../../../../shared/job/schema/conditions.ts";
import { wintersOf } from "../../../../sim/plan/conditions/condition.ts";
import { driveConditions } from "../../../../sim/plan/conditions/driveConditions.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();

const [pack] = job.packs;

const trace = roadTrace({ kind: "cycle", id: "udds", title: "urban", cycle: "udds" }, cycleTexts);

const { temperature_degC } = job.environment;

/** The job's own weather as a condition, with what is to be other. */
const weather = (changes: Partial<Weather> = {}): Weather => ({
  temperature_degC,
  heat: { kind: "none" },
  isDark: false,
  drag_ratio: 1,
  rolling_ratio: 1,
  usable_frac: 1,
  resistance_ratio: 1,
  wind_kmh: 0,
  ...(job.environment.pack_degC !== undefined && { pack_degC: job.environment.pack_degC }),
  ...changes,
});

const today_km = rangeOn(prepare(job, pack), trace).distance_m / 1000;

describe("the conditions of a job", () => {
  it("are none where it knows winter by a factor", () => {
    expect(wintersOf(job)).toBeUndefined();
    expect(driveConditions(job, trace)).toEqual(job.packs.map(() => ({ others: [] })));
  });

  it("are winter new, winter at ten years with the allowance's capacity, and the workshop's own", () => {
    const own = { ...weather(), name: "as ever", isOld: false };
    const cold = readJob({
      ...job,
      conditions: { winter: { temperature_degC: -5 }, old: { resistance_ratio: 1.2 }, others: [own] },
    });
    const [{ winter, tenYearsWinter, others }] = driveConditions(cold, trace);
    if (!winter || !tenYearsWinter) throw new Error("winter is driven");
    expect(winter.range_km).toBeLessThan(today_km);
    expect(tenYearsWinter.range_km).toBeLessThan((cold.allowance.aged_frac + 0.05) * winter.range_km);
    expect(others.map(({ name, range_km }) => [name, range_km])).toEqual([["as ever", today_km]]);
  });
});
