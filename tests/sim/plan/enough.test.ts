import { describe, expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { driveJob } from "../../../sim/plan/drive/driveJob.ts";
import { enoughFor } from "../../../sim/plan/enough.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { inventedCandidate, inventedUse } from "../../support/inventedCandidate.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const base = inventedJob();
const job: Job = {
  ...base,
  allowance: { winter_ratio: 1.5, aged_frac: 0.75 },
  packs: [4, 1, 2].map((parallelModules) => ({
    ...base.packs[0],
    name: `${parallelModules} strings`,
    parallelModules,
  })),
};
const { candidates } = driveJob(job, cycleTrace("ece-15", cycleTexts));
const byName = new Map(candidates.map((candidate) => [candidate.name, candidate]));
const ranges_km = [1, 2, 4].map((strings) => byName.get(`${strings} strings`)?.range_km ?? Number.NaN);
/** A usual day that asks for so much range: day · 1.5 / 0.75. */
const dayFor = (range_km: number, changes: Partial<Job> = {}) =>
  enoughFor({ ...job, ...changes, usualDay_km: range_km / 2 }, candidates);

it("is the smallest pack whose range covers the day with winter and age, whatever their order", () => {
  expect(dayFor(ranges_km[0] * 0.99).pack).toBe("1 strings");
  expect(dayFor(ranges_km[0] * 1.01).pack).toBe("2 strings");
  expect(dayFor(ranges_km[1] * 1.01).pack).toBe("4 strings");
});

describe("the list of packs", () => {
  // A usual day of 10 km, a winter that takes twice as much and half left at ten years: 40 km are asked for.
  const few = [3, 4, 5].map((size) => inventedCandidate(size));
  const said = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, "metric");

  it("says for each whether it is enough, why, and what is left of it", () => {
    const { needed_km, pack, packs, sentences } = enoughFor(inventedUse(), few);
    expect(needed_km).toBe(40);
    expect(pack).toBe("4 kWh");
    expect(packs.map(({ isEnough, because }) => [isEnough, because])).toEqual([
      [false, "short"],
      [true, "enough"],
      [true, "enough"],
    ]);
    expect(packs.map(({ why }) => said(why))).toEqual([
      "30 km of range, 10 km short of the 40 km asked for.",
      "40 km of range, 40 km asked for.",
      "50 km of range, 40 km asked for.",
    ]);
    expect(packs[2]).toMatchObject({ dayUse_frac: 0.2, spare_km: 40, winterSpare_km: 15, agedSpare_km: 2.5 });
    expect(said(sentences.at(-1) ?? [])).toBe(
      "With a winter that takes 100 % more energy and an old pack that holds 50 % of today's charge, a day of 10 km asks for 40 km of range today.",
    );
  });
  it("has a car that does not keep up as behind, though it is long enough", () => {
    const { packs } = enoughFor(inventedUse(), [inventedCandidate(5, { missed_km: 1 })]);
    expect(packs[0]).toMatchObject({ isEnough: false, because: "behind" });
  });
});

it("is exactly enough where range and need are one", () => {
  expect(dayFor(ranges_km[0]).pack).toBe("1 strings");
});

it("is none where the largest falls short, and the one that goes furthest is named", () => {
  const { pack, sentences } = dayFor(ranges_km[2] * 1.5);
  expect(pack).toBeUndefined();
  expect(sentences.map((sentence) => messageIn(sentence, "metric")).join(" ")).toMatch(
    /^4 strings: not enough\. .* None of these packs is enough; this one goes furthest\./,
  );
});

it("tells the share of the range the day takes and what is left", () => {
  const { packs } = dayFor(ranges_km[0]);
  const row = packs.find(({ name }) => name === "1 strings");
  expect(row?.dayUse_frac).toBeCloseTo(0.5, 12);
  expect(row?.spare_km).toBeCloseTo(ranges_km[0] / 2, 9);
});

describe("a pack that may not be used is not enough, however far it goes, and has no kilometres", () => {
  const { min_V, max_V } = candidates[0].pack;
  const { controller, vehicle } = job;
  it.each([
    ["above the controller", { controller: { ...controller, max_V: max_V - 1 } }, /The controller takes/],
    ["below the controller", { controller: { ...controller, min_V: max_V + 1 } }, /The controller needs/],
    ["above the plate", { vehicle: { ...vehicle, gross_kg: 1 } }, /Its plate allows/],
  ])("%s", (_, changes, why) => {
    const { pack, packs } = enoughFor({ ...job, ...changes, usualDay_km: 1 }, candidates);
    expect(pack).toBeUndefined();
    for (const one of packs) {
      expect(one.because).toBe("unusable");
      expect(messageIn(one.why, "metric")).toMatch(why);
      expect(Object.keys(one).filter((key) => key.endsWith("_km"))).toEqual([]);
    }
  });
  it("unlike one that the controller stops before it is empty", () => {
    const changes = { controller: { ...controller, min_V: min_V + 1, max_V: max_V + 1 } };
    expect(enoughFor({ ...job, ...changes, usualDay_km: 1 }, candidates).pack).toBe("1 strings");
  });
});

it("is not a pack with which the car misses more than a fiftieth of the road", () => {
  const lagging = candidates.map((candidate) => ({ ...candidate, missed_km: 0.03 * candidate.distance_km }));
  const { pack, packs } = enoughFor({ ...job, usualDay_km: 1 }, lagging);
  expect(pack).toBeUndefined();
  expect(messageIn(packs[0].why, "metric")).toMatch(/does not keep up/);
});

it("has no share of the day where the car does not move", () => {
  const still = candidates.map((candidate) => ({ ...candidate, range_km: 0 }));
  expect(enoughFor(job, still).packs[0].dayUse_frac).toBeUndefined();
});
