import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { PROGRAM_VERSION } from "../../../../shared/programVersion.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { besideWords } from "../../../../sim/plan/predictions/besideWords.ts";
import { ageOf, compare } from "../../../../sim/plan/predictions/compare.ts";
import { frozen, prediction, reports, reportsOf } from "./frozenJob.ts";

const words = (changed: Job, asOf = reports) =>
  besideWords(compare(prediction, changed, asOf))
    .map((each) => messageIn(each, "metric"))
    .join(" ");

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

it("compares versions number by number", () => {
  expect(["0.9.0", "0.10.0", "0.10.1", "1.0.0"].map((each) => ageOf(each, "0.10.0"))).toEqual([
    "older",
    "same",
    "newer",
    "newer",
  ]);
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
