import { describe, expect, it } from "vitest";
import type { PredictedPack } from "../../../../shared/job/schema/predictions.ts";
import { PROGRAM_VERSION } from "../../../../shared/programVersion.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { packAnswer } from "../../../../sim/plan/answer/packAnswer.ts";
import { besideWords, rangeWords } from "../../../../sim/plan/predictions/besideWords.ts";
import { ageOf, type Beside } from "../../../../sim/plan/predictions/compare.ts";
import { freeze } from "../../../../sim/plan/predictions/freeze.ts";
import { inventedCandidate, inventedUse } from "../../../support/inventedCandidate.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
const ten = inventedCandidate(10);
const trace = { id: "town", title: "Town", distance_km: 1, duration_s: 195, climb_m: 0 };
const answered = { ...packAnswer(inventedUse(), 0, ten, undefined), verdict: "enough" as const };
/** A prediction of one invented pack, and of no road driven for it. */
const frozen = (note?: string, recommended?: number) =>
  freeze(
    job,
    {
      runs: { candidates: [ten], trace } as unknown as Parameters<typeof freeze>[1]["runs"],
      answer: { packs: [answered], ...(recommended !== undefined && { recommended }) } as unknown as Parameters<
        typeof freeze
      >[1]["answer"],
    },
    "2026-03-03T09:30:00.000Z",
    note,
  );
const prediction = frozen();

const beside = (changes: Partial<Beside>) =>
  besideWords({
    prediction,
    program: "same",
    isUnchanged: false,
    road: "same",
    changed: [],
    packs: [],
    ...changes,
  }).map((each) => messageIn(each, "metric"));

describe("what stands between a prediction and the job as it is now", () => {
  const first = (changes: Partial<Beside>) => beside(changes)[0].replace(/^.*? by version [0-9.]+\d\. /, "");
  it("is nothing where nothing has changed", () => {
    expect(beside({ isUnchanged: true })).toEqual([
      `As predicted on 3 March 2026 by version ${PROGRAM_VERSION}. Nothing that it depends on has changed since.`,
    ]);
  });
  it("is how many values have changed, and what became of its road", () => {
    const stays = ": it stays as it was, and today's figures stand beside it.";
    expect(first({ changed: ["a"] })).toBe(`One value has changed since${stays}`);
    expect(first({ changed: ["a", "b"] })).toBe(`2 values have changed since${stays}`);
    expect(first({ changed: ["a"], road: "changed" })).toBe(
      `One value has changed since and its road was changed${stays}`,
    );
    expect(first({ road: "changed" })).toBe(`Its road was changed${stays}`);
    expect(first({ road: "another" })).toBe(`Another road is driven now${stays}`);
    expect(first({ road: "gone" })).toBe(`Its road is no longer in the job${stays}`);
  });
  it("is the program where that is another one, and inputs that were changed by hand", () => {
    expect(beside({ program: "older" })[1]).toMatch(
      /^This program is now version .* may come from the program as well/,
    );
    expect(beside({ program: "newer" })[1]).toMatch(/ is newer than this program /);
    expect(beside({ isWhole: true })).toHaveLength(1);
    expect(beside({ isWhole: false })[1]).toMatch(/^Its inputs are no longer the ones that were frozen/);
  });
});

describe("versions", () => {
  it("are compared by their first number that differs", () => {
    const ages = (...theirs: readonly string[]) => theirs.map((each) => ageOf(each, "1.2.3"));
    expect(ages("1.2.3", "1.2.4", "1.2.2", "1.3.0", "1.1.9", "2.0.0", "0.9.9")).toEqual([
      "same",
      "newer",
      "older",
      "newer",
      "older",
      "newer",
      "older",
    ]);
  });
});

describe("a predicted range in words", () => {
  const words = (low: number, value: number, high: number, changes: Partial<PredictedPack> = {}) => {
    const range = rangeWords({ ...prediction.packs[0], range_km: { new: { low, value, high } }, ...changes });
    return range && messageIn(range, "metric");
  };
  it("is a band from a kilometre on, one figure below that, and at least what was driven", () => {
    expect(words(64.4, 70, 76.9)).toBe("64 to 76 km");
    expect(words(70, 70.5, 71)).toBe("70 to 71 km");
    expect(words(70.1, 70.6, 71)).toBe("70 km");
    expect(words(70, 70.6, 75, { isAtLeast: true })).toBe("at least 70 km");
  });
  it("is in the reader's units, of the condition that is asked for", () => {
    const pack = { ...prediction.packs[0], range_km: { new: { low: 64.4, value: 70, high: 76.9 } } };
    expect(messageIn(rangeWords(pack) ?? [], "british")).toBe("40 to 47 miles");
    expect(rangeWords(pack, "winter")).toBeUndefined();
  });
  it("is nothing of a pack that drives no road", () => {
    const { range_km: _, ...stopped } = prediction.packs[0];
    expect(rangeWords(stopped)).toBeUndefined();
  });
});

describe("what is frozen", () => {
  it("has its note without blanks around it, and none that is blank", () => {
    expect(frozen(" the quote ").note).toBe("the quote");
    expect(frozen("  ")).not.toHaveProperty("note");
    expect(frozen()).not.toHaveProperty("note");
  });
  it("names the pack that was recommended, if one was", () => {
    expect(frozen(undefined, 0).recommended).toBe("10 kWh");
    expect(frozen()).not.toHaveProperty("recommended");
  });
  it("has range and what is left of the day with the verdict, and shares nothing with the job", () => {
    const [pack] = prediction.packs;
    expect(pack).toMatchObject({ name: "10 kWh", verdict: "enough", mass_kg: 100, usable_kWh: 10 });
    expect(pack.range_km?.["new"]?.value).toBe(100);
    expect(pack.left_km?.["tenYearsWinter"]?.value).toBe(15);
    expect(pack).not.toHaveProperty("isAtLeast");
    expect(prediction.state.vehicle).toEqual(job.vehicle);
    expect(prediction.state.vehicle).not.toBe(job.vehicle);
  });
  it("is of the road that is driven, and of no other", () => {
    const runs = { candidates: [ten], trace: { ...trace, id: "other" } } as unknown as Parameters<
      typeof freeze
    >[1]["runs"];
    const answer = { packs: [answered] } as unknown as Parameters<typeof freeze>[1]["answer"];
    expect(() => freeze(job, { runs, answer }, "2026-03-03T09:30:00.000Z")).toThrow(
      /road town was asked from a drive of other/,
    );
  });
});
