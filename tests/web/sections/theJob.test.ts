import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import theJob from "../../../web/sections/theJob.ts";
import { demoJob } from "../../support/demoJob.ts";

/** What the working says of the first demo with changes in it: its usual day is 38 km, its longest 74 km. */
function told(changes: Partial<Job>) {
  const result = theJob.compute({ job: { ...demoJob(), origins: {}, ...changes }, units: "metric" });
  return {
    sentence: theJob.sentence(result),
    summary: theJob.summary?.(result),
    attention: theJob.attention?.(result),
  };
}

it("says by which days the packs are judged", () => {
  expect(told({})).toEqual({
    sentence:
      "The packs are judged by a usual day of 38 km; 74 km on the longest day of the year. No value below is a guess.",
    summary: "usual day 38 km, longest 74 km",
    attention: [],
  });
  const unknown = told({ longestDay_km: undefined });
  expect(unknown.sentence).toContain("a usual day of 38 km; the longest day of the year is not known.");
  expect(unknown.summary).toBe("usual day 38 km, longest not known");
  expect(unknown.attention).toEqual([]);
});

it("warns of a longest day that is shorter than the usual one, and of none that is as long", () => {
  expect(told({ longestDay_km: 37 }).attention).toEqual([expect.stringMatching(/one of the two is wrong\.$/)]);
  expect(told({ longestDay_km: 38 }).attention).toEqual([]);
});

it("counts what is usual or guessed, and nothing that somebody measured, read or typed", () => {
  const known: Job["origins"] = {
    "vehicle.kerb_kg": { from: "measured" },
    "motor.mass_kg": { from: "handbook" },
    "vehicle.gross_kg": { from: "typed", plusMinus_frac: 0.1 },
  };
  const one: Job["origins"] = { ...known, "vehicle.load_kg": { from: "usual" } };
  const two: Job["origins"] = { ...one, "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 0.3 } };
  expect(told({ origins: known }).sentence).toMatch(/No value below is a guess\.$/);
  expect(told({ origins: one }).sentence).toMatch(/ One value below is still usual or guessed; /);
  expect(told({ origins: two }).sentence).toMatch(/ 2 values below are still usual or guessed; /);
});
