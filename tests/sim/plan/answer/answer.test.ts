import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { VERDICTS } from "../../../../sim/plan/answer/packAnswer.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

// With the invented use a pack of so many kWh goes ten times that in km today and 2.5 times that at ten years in winter: 4 kWh do 10 km.
const use = inventedUse();
const packs = (...sizes: readonly number[]) => sizes.map((size) => inventedCandidate(size));
/** Each pack's range may be so many percent less, and as many more. */
const doubts = (sizes: readonly number[], share: number) =>
  sizes.map((size) => [inventedUnknown(10 * size, 10 * size * share, 10 * size * share)]);
const words = (sizes: readonly number[], share: number) =>
  answerFor(use, packs(...sizes), doubts(sizes, share)).packs.map(({ verdict }) => verdict);

describe("the verdict", () => {
  it("is the one of the four words that the kilometres at ten years in winter ask for", () => {
    expect(words([3, 4, 5, 6], 0.1)).toEqual(["not enough", "only just", "enough", "more than enough"]);
  });

  it("is enough at exactly nothing left, with nothing unknown", () => {
    expect(words([3.999, 4], 0)).toEqual(["not enough", "enough"]);
  });

  it("does not hang on the order of the packs", () => {
    expect(words([6, 3, 5, 4], 0.1)).toEqual(["more than enough", "not enough", "enough", "only just"]);
  });

  it("never gets worse with size, where a larger pack goes further with all that is not known", () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 120 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 0.9, noNaN: true }), (found, share) => {
        const rising = [...found].sort((a, b) => a - b).map((tenths) => tenths / 10);
        const ranks = words(rising, share).map((word) => (word ? VERDICTS.indexOf(word) : -1));
        expect(ranks).not.toContain(-1);
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      }),
    );
  });

  it("is only just where the car may not drive the road at all, however far it goes", () => {
    const unknown = inventedUnknown(100, 0, 100, { path: "environment.grip_coeff", failsAtHigh: true });
    const {
      packs: [pack],
    } = answerFor(use, packs(10), [[unknown]]);
    expect(pack.verdict).toBe("only just");
    expect(pack.mayFail).toEqual([{ path: "environment.grip_coeff", value: 1.1 }]);
    expect(pack.left?.tenYearsWinter).toEqual({ value: 15, low: 15, high: 15 }); // no distance where it does not drive
  });

  it("waits for the band where that decides, and not where it cannot", () => {
    const answer = answerFor(use, packs(3, 5), undefined);
    expect(answer.packs.map(({ verdict }) => verdict)).toEqual(["not enough", undefined]);
    expect(answer.isBandKnown).toBe(false);
  });

  it("waits for the band where a pack has just come or gone, and what is not known was driven for the packs before", () => {
    for (const before of [[3], [3, 4, 4.1]])
      expect(answerFor(use, packs(3, 4.1), doubts(before, 0.1))).toEqual(answerFor(use, packs(3, 4.1), undefined));
  });
});

describe("the pack that is recommended", () => {
  it("is the smallest that does what is asked; beside it the smallest that is enough with the whole band", () => {
    const answer = answerFor(use, packs(6, 5, 4, 3), doubts([6, 5, 4, 3], 0.1));
    expect(answer).toMatchObject({ recommended: 2, smallest: 2, enough: 1 });
  });

  it("is the one that goes furthest where none does, and not the largest", () => {
    const candidates = [inventedCandidate(3), inventedCandidate(3.5, { range_km: 20 }), inventedCandidate(2)];
    const answer = answerFor(use, candidates, [[], [], []]);
    expect(answer).toMatchObject({ recommended: 0 });
    expect(answer.smallest).toBeUndefined();
  });

  it("is never one that may not be used, nor the next one up, nor the largest", () => {
    const above = (size: number) => inventedCandidate(size, { pack: { ...inventedCandidate(size).pack, max_V: 999 } });
    const answer = answerFor(use, [inventedCandidate(2), above(4), inventedCandidate(8), above(20)], [[], [], [], []]);
    expect(answer).toMatchObject({ recommended: 2, enough: 2 });
    expect(answer.largest).toBeUndefined();
    for (const i of [1, 3]) {
      expect(answer.packs[i].stop?.kind).toBe("packAboveController");
      expect(answer.packs[i]).not.toHaveProperty("verdict");
      expect(answer.packs[i]).not.toHaveProperty("left");
    }
    expect(answerFor(use, [above(4)], [[]]).recommended).toBeUndefined();
  });

  it("is one that keeps up with the road before one that goes further and does not", () => {
    const slow = inventedCandidate(8, { missed_km: 0.3 });
    expect(answerFor(use, [slow, inventedCandidate(3)], [[], []])).toMatchObject({ recommended: 1 });
  });
});

describe("a car that does not drive the road", () => {
  const findings = [{ kind: "stuck", weight: "warning" as const, sentence: ["does not start"] }];
  const still = (size: number) =>
    inventedCandidate(size, { rangeEnd: "stuck", distance_km: 0.1, missed_km: 4.9, range_km: 0.1, findings });

  it("comes first, with its reason and without kilometres", () => {
    const answer = answerFor(use, [still(4), still(8)], [[], []]);
    expect(answer.cannot).toEqual(["does not start"]);
    expect(answer.packs.map(({ verdict, left }) => ({ verdict, left }))).toEqual([
      { verdict: "not enough", left: undefined },
      { verdict: "not enough", left: undefined },
    ]);
  });

  it("is so for its pack alone where another one drives it", () => {
    const answer = answerFor(use, [still(8), inventedCandidate(6)], [[], []]);
    expect(answer.cannot).toBeUndefined();
    expect(answer).toMatchObject({ recommended: 1 });
    expect(answer.packs[0].cannot).toEqual(["does not start"]);
  });
});

it("gives no kilometres of a road that draws nothing, and keeps those of a car that is stuck only later in the day", () => {
  const findings = [{ kind: "noRange", weight: "warning" as const, sentence: ["draws nothing"] }];
  const endless = inventedCandidate(8, { rangeEnd: "endless", range_km: 0, findings });
  expect(answerFor(use, [endless], [[]])).toMatchObject({ cannot: ["draws nothing"] });
  const later = inventedCandidate(8, { rangeEnd: "stuck", range_km: 60 });
  const { packs } = answerFor(use, [later], [[]]);
  expect(packs[0]?.cannot).toBeUndefined();
  expect(packs[0]?.range?.new.value).toBe(60);
});

it("counts the usual days that the largest pack never uses, and what it weighs more than the one recommended", () => {
  // 20 kWh: 200 km new, 50 at ten years in winter; 10 of them used.
  const { largest } = answerFor(use, packs(5, 20), [[], []]);
  expect(largest).toEqual({ index: 1, unusedDays: { low: 4, high: 19 }, heavier_kg: 150 });
});

it("counts nothing that the largest pack never uses where it does not keep up, or does not get home", () => {
  const slow = inventedCandidate(20, { missed_km: 1 });
  expect(answerFor(use, [inventedCandidate(5), slow], [[], []]).largest).toBeUndefined();
  // The larger one takes so much more that it does not get home in winter at ten years.
  const heavy = inventedCandidate(20, { range_km: 39 });
  expect(answerFor(use, [inventedCandidate(5), heavy], [[], []]).largest).toBeUndefined();
  expect(answerFor(use, [inventedCandidate(5), { ...heavy, range_km: 40 }], [[], []]).largest?.unusedDays.low).toBe(0);
});

it("judges the longest day in the same conditions", () => {
  const {
    packs: [pack],
  } = answerFor({ ...use, longestDay_km: 30 }, packs(5), doubts([5], 0.1));
  expect(pack.longest?.new).toEqual({ value: 20, low: 15, high: 25 });
  expect(pack.longest?.tenYearsWinter.value).toBe(12.5 - 30);
});

it("takes what is allowed for winter and age as unknown where the job says that they are", () => {
  const unknown = inventedUnknown(50, 0, 0, { path: "allowance.winter_ratio", value: 2, low: 1, high: 2.5 });
  const {
    packs: [pack],
  } = answerFor(use, packs(5), [[unknown]]);
  expect(pack.left?.new).toEqual({ value: 40, low: 40, high: 40 });
  expect(pack.left?.winter).toEqual({ value: 15, low: 10, high: 40 });
});

describe("a road that a log leaves open", () => {
  // 10 kWh go 100 km today. Energy of 0.8 to 1.25 times that of the road as driven makes 80 to 125 km of it.
  const open = { ...inventedCandidate(10), roadEnergy_ratio: { low: 0.8, high: 1.25 } };

  it("widens the band as one more unknown, beside the others as squares add up", () => {
    const [alone] = answerFor(use, [open], [[]]).packs;
    expect(alone.range?.new).toEqual({ value: 100, low: 80, high: 125 });
    const [both] = answerFor(use, [open], [[inventedUnknown(100, 15, 15)]]).packs;
    expect(both.range?.new.low).toBeCloseTo(100 - Math.hypot(20, 15), 9);
    expect(both.range?.new.high).toBeCloseTo(100 + Math.hypot(25, 15), 9);
  });

  it("goes with the range into every condition", () => {
    const [pack] = answerFor(use, [open], [[]]).packs;
    expect(pack.range?.tenYearsWinter).toEqual({ value: 25, low: 20, high: 31.25 });
  });

  it("is not in a band that is not known yet", () => {
    expect(answerFor(use, [open], undefined).packs[0].range?.new).toEqual({ value: 100, low: 100, high: 100 });
  });
});
