import { expect, it } from "vitest";
import about from "../../../../package.json" with { type: "json" };
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { PROGRAM_VERSION } from "../../../../shared/programVersion.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { besideWords, rangeWords } from "../../../../sim/plan/predictions/besideWords.ts";
import { ageOf, compare } from "../../../../sim/plan/predictions/compare.ts";
import { freeze, withPrediction } from "../../../../sim/plan/predictions/freeze.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const at = "2026-03-03T09:30:00.000Z";

function reportsOf(job: Job) {
  const runs = driveJob(job, roadTrace(job.roads[0], cycleTexts));
  const answer = answerFor(
    job,
    runs.candidates,
    runs.candidates.map(() => []),
  );
  return { runs, answer };
}

const job = demoJob();
const reports = reportsOf(job);
const frozen = withPrediction(job, freeze(job, reports, at, " the quote "));
const [prediction] = frozen.predictions;

const words = (changed: Job, asOf = reports) =>
  besideWords(compare(prediction, changed, asOf))
    .map((each) => messageIn(each, "metric"))
    .join(" ");

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

it("has nothing to say against a job that has not changed, whatever is named otherwise in it", () => {
  const renamed = { ...frozen, title: "Another title", notes: [{ after: "packs", text: "measure the boot" }] };
  expect(compare(prediction, renamed, reports)).toMatchObject({ isUnchanged: true, changed: [], isWhole: true });
  expect(words(renamed)).toBe(
    `As predicted on 3 March 2026 by version ${PROGRAM_VERSION}. Nothing that it depends on has changed since.`,
  );
});

it("stays as it was when the job changes, with what is now beside it", () => {
  const before = structuredClone(prediction);
  const heavier: Job = { ...frozen, vehicle: { ...frozen.vehicle, load_kg: frozen.vehicle.load_kg + 200 } };
  const now = reportsOf(heavier);
  const beside = compare(prediction, heavier, now);
  expect(beside.changed).toEqual(["vehicle.load_kg"]);
  expect(beside.packs[0].then).toEqual(before.packs[0]);
  expect(beside.packs[0].now?.testMass_kg).toBeCloseTo(before.packs[0].testMass_kg + 200, 6);
  expect(beside.packs[0].now?.range_km?.["new"]?.value).toBeLessThan(before.packs[0].range_km?.["new"]?.value ?? 0);
  expect(words(heavier, now)).toMatch(/One value has changed since: it stays as it was, and today's figures/);
  expect(prediction).toEqual(before);
});

it("names packs that came or went, and a road that was changed, left or lost", () => {
  const [first, ...others] = frozen.packs;
  const other: Job = { ...frozen, packs: [...others, { ...first, name: "Another" }] };
  const beside = compare(prediction, other, reportsOf(other));
  expect(beside.packs.find(({ name }) => name === first.name)).not.toHaveProperty("now");
  expect(beside.packs.find(({ name }) => name === "Another")).not.toHaveProperty("then");
  const [road, second] = frozen.roads;
  expect(compare(prediction, { ...frozen, roads: [{ ...road, title: "New name" }, second] }).road).toBe("same");
  const hilly = { ...road, hills: { distance_km: [0, 1], elevation_m: [0, 50] } };
  expect(compare(prediction, { ...frozen, roads: [hilly, second] }).road).toBe("changed");
  expect(compare(prediction, { ...frozen, roads: [second] }).road).toBe("gone");
  expect(compare(prediction, { ...frozen, drivenRoad: second.id }).road).toBe("another");
  expect(words({ ...frozen, roads: [second] })).toMatch(/Its road is no longer in the job: it stays as it was/);
});

it("notices inputs that were changed by hand in the file", () => {
  const forged = { ...prediction, state: { ...prediction.state, usualDay_km: 12 } };
  expect(compare(forged, frozen).isWhole).toBe(false);
  expect(besideWords(compare(forged, frozen)).map((each) => messageIn(each, "metric"))).toContain(
    "Its inputs are no longer the ones that were frozen: the job file was changed by hand, so that nothing can be compared with it.",
  );
});

it("reads one that a newer version froze, and says so in one sentence", () => {
  const newer = readJob({ ...frozen, predictions: [{ ...prediction, program: "9.1.0" }] });
  const beside = compare(newer.predictions[0], newer);
  expect(beside).toMatchObject({ program: "newer", isUnchanged: true });
  expect(beside).not.toHaveProperty("isWhole");
  const sentences = besideWords(beside).map((each) => messageIn(each, "metric"));
  expect(sentences).toHaveLength(2);
  expect(sentences[1]).toMatch(/^Version 9\.1\.0 is newer than this program \(\d+\.\d+\.\d+\): its figures are shown/);
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

it("compares versions number by number", () => {
  expect(["0.9.0", "0.10.0", "0.10.1", "1.0.0"].map((each) => ageOf(each, "0.10.0"))).toEqual([
    ...["older", "same", "newer", "newer"],
  ]);
});

it("keeps the first and the latest where there is no room for more", () => {
  const dated = (day: number) => ({ ...prediction, at: `2026-03-0${day}T00:00:00Z` });
  const full = [1, 2, 3].reduce<Job>((each, day) => withPrediction(each, dated(day), 3), job);
  expect(withPrediction(full, dated(4), 3).predictions.map((each) => each.at.slice(8, 10))).toEqual(["01", "03", "04"]);
});

it("says a range as a band in the reader's units", () => {
  const pack = { ...prediction.packs[0], range_km: { new: { value: 70, low: 64.4, high: 76.9 } } };
  const inUnits = (units: "metric" | "british") => messageIn(rangeWords(pack) ?? [], units);
  expect(inUnits("metric")).toBe("64 to 76 km");
  expect(inUnits("british")).toBe("40 to 47 miles");
  expect(rangeWords(pack, "winter")).toBeUndefined();
});

it("bears the version of the package", () => {
  expect(PROGRAM_VERSION).toBe(about.version);
});
