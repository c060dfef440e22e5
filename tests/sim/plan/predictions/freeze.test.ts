import { expect, it } from "vitest";
import about from "../../../../package.json" with { type: "json" };
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { PROGRAM_VERSION } from "../../../../shared/programVersion.ts";
import { withPrediction } from "../../../../sim/plan/predictions/freeze.ts";
import { at, frozen, job, prediction, reports } from "./frozenJob.ts";

it("is kept in the job file whole, with its inputs, results, version, digest and date", () => {
  const read = readJob(JSON.parse(JSON.stringify(frozen)));
  expect(read.predictions).toEqual([prediction]);
  expect(prediction).toMatchObject({ at, program: PROGRAM_VERSION, note: "the quote" });
  expect(prediction.state.vehicle).toEqual(job.vehicle);
  expect(prediction.packs.map(({ name }) => name)).toEqual(job.packs.map(({ name }) => name));
  const [first] = prediction.packs;
  const [driven] = reports.runs.candidates;
  expect(first).toMatchObject({ battery_Whpkm: driven.battery_Whpkm, peak: { battery_A: driven.peak.battery_A } });
  expect(first.range_km?.["new"]?.value).toBe(driven.range_km);
});

it("refuses one in a newer layout in one sentence, and each wrong value of ours with its path", () => {
  const problems = (changes: object) => {
    try {
      readJob({ ...frozen, predictions: [{ ...prediction, ...changes }] });
    } catch (error) {
      if (error instanceof InputError) return error.problems.map(({ where, message }) => `${where}: ${message}`);
    }
    return [];
  };
  expect(problems({ layout: 2, program: "9.1.0", weather: {}, mood: 3 })).toEqual([
    "predictions.0.layout: found a prediction frozen by version 9.1.0 in layout 2, this program reads up to layout 1: open the job with a newer program",
  ]);
  expect(problems({ layout: "two" })).toEqual(['predictions.0.layout: found "two", 1 wanted']);
  expect(problems({ at: "last Tuesday" })[0]).toMatch(/^predictions\.0\.at: found "last Tuesday", a date and time/);
  expect(problems({ digest: "abc" })[0]).toMatch(/^predictions\.0\.digest: found "abc"/);
  expect(problems({ program: "new" })[0]).toMatch(
    /^predictions\.0\.program: found "new".*a version such as 0\.1\.0 wanted/,
  );
  expect(problems({ packs: [] })[0]).toMatch(/^predictions\.0\.packs: found 0 entries/);
});

it("keeps the first and the latest where there is no room for more", () => {
  const dated = (day: number) => ({ ...prediction, at: `2026-03-0${day}T00:00:00Z` });
  const full = [1, 2, 3].reduce<Job>((each, day) => withPrediction(each, dated(day), 3), job);
  expect(withPrediction(full, dated(4), 3).predictions.map((each) => each.at.slice(8, 10))).toEqual(["01", "03", "04"]);
});

it("bears the version of the package", () => {
  expect(PROGRAM_VERSION).toBe(about.version);
});
