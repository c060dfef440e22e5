import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { type Answer, answerFor } from "../../../../sim/plan/answer/answer.ts";
import { answerWords, largestWords } from "../../../../sim/plan/answer/sentence.ts";
import type { Candidate } from "../../../../sim/plan/driveReport.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

// 10 km for every kWh today, half of that in winter, a quarter at ten years in winter. The usual day is 10 km.
const use = inventedUse();

function answered(sizes: readonly number[], share: number, changes: Parameters<typeof inventedUse>[0] = {}): Answer {
  const unknowns = sizes.map((size) => [inventedUnknown(10 * size, 10 * size * share, 10 * size * share)]);
  return answerFor(
    inventedUse(changes),
    sizes.map((size) => inventedCandidate(size)),
    unknowns,
  );
}

function wordsOf(answer: Answer, chosen?: number): { headline: string; text: string } {
  const { headline, sentences } = answerWords(answer, chosen ?? answer.recommended);
  return {
    headline: messageIn(headline, "metric"),
    text: sentences.map((sentence) => messageIn(sentence, "metric")).join(" "),
  };
}

describe("a car that does not do what else is asked of it", () => {
  const sentence = ["The car does not start on 1 in 4."];
  const finding = { kind: "hillTooSteep", weight: "warning" as const, sentence };
  const answer = answerFor(use, [inventedCandidate(5.1, { findings: [finding] })], [[inventedUnknown(51, 0, 0)]]);

  it("is said first, and then what the pack does", () => {
    const { headline, text } = wordsOf(answer);
    expect(answerWords(answer).isStop).toBe(false);
    expect(headline).toBe("The car does not do what is asked.");
    expect(text).toMatch(/^The car does not start on 1 in 4\. For the day, 5\.1 kWh is enough\. A usual day/);
  });
});

describe("the sentence", () => {
  it("says the three conditions of a pack that is enough", () => {
    expect(answerWords(answered([5.1], 0.01)).isStop).toBe(false);
    expect(wordsOf(answered([5.1], 0.01))).toEqual({
      headline: "5.1 kWh: enough.",
      text: "A usual day of 10 km ends with about 41 km left, in winter about 15, and at ten years, in winter, still about 2.",
    });
  });

  it("says of one that is only just enough how far it may fall short, and which pack would not", () => {
    expect(wordsOf(answered([4.4, 6], 0.1))).toEqual({
      headline: "4.4 kWh: only just.",
      text: "A usual day of 10 km ends with about 34 km left, in winter about 12. At ten years, in winter, it may end 1 km short; 6 kWh would not.",
    });
  });

  it("says that no pack is enough with all that is not known where so", () => {
    expect(wordsOf(answered([4.2, 4.4], 0.1)).text).toContain(
      "None of these packs is enough with all that is not known.",
    );
    expect(wordsOf(answered([4.4], 0.1)).text).not.toContain("None of these");
  });

  it("says when a day first fails, and which pack is enough instead", () => {
    const answer = answered([0.8, 1.6, 3.2, 5], 0);
    expect(wordsOf(answer, 0).text).toBe(
      "A usual day of 10 km ends about 2 km short when the pack is new, and at ten years, in winter, about 8 km short. The smallest that is enough is 5 kWh.",
    );
    expect(wordsOf(answer, 1).text).toContain("about 6 km left, but in winter about 2 km short");
    expect(wordsOf(answer, 2).text).toContain(
      "about 22 km left, in winter about 6, but at ten years, in winter, about 2 km short",
    );
  });

  it("names the one that goes furthest where none is enough", () => {
    const answer = answered([1, 3, 2], 0);
    expect(wordsOf(answer).headline).toBe("3 kWh: not enough.");
    expect(wordsOf(answer).text).toContain("None of these packs is enough; this one goes furthest.");
    expect(wordsOf(answer, 0).text).toContain("None of these packs is enough; 3 kWh goes furthest.");
  });

  it("names the pack that is enough beside one that is more", () => {
    expect(wordsOf(answered([5, 8], 0), 1)).toMatchObject({
      headline: "8 kWh: more than enough.",
      text: expect.stringContaining("5 kWh is enough."),
    });
  });

  it("says where the longest day needs a charge", () => {
    const longest = (longestDay_km: number, share = 0) => wordsOf(answered([10], share, { longestDay_km })).text;
    expect(longest(101)).toMatch(/The longest day, 101 km, needs a charge on the way\.$/);
    expect(longest(51)).toMatch(/goes on one charge while the pack is new, but not in winter\.$/);
    expect(longest(26)).toMatch(/goes on one charge when new, but not in winter at ten years\.$/);
    expect(longest(25)).toMatch(/goes on one charge\.$/);
    expect(longest(25, 0.1)).toMatch(/only just goes on one charge at ten years, in winter\.$/);
    expect(longest(9)).not.toContain("longest");
    expect(wordsOf(answered([10], 0, { longestDay_km: 101, longestDaysAYear: 2 })).text).toMatch(
      /The longest day, 101 km twice a year, needs a charge on the way\.$/,
    );
  });

  it("says how often the longest day comes", () => {
    const often = (longestDaysAYear: number) =>
      /101 km (.*), needs/.exec(wordsOf(answered([10], 0, { longestDay_km: 101, longestDaysAYear })).text)?.[1];
    expect([1, 2, 12].map(often)).toEqual(["once a year", "twice a year", "12 times a year"]);
  });

  it("does not speak of a longest day no longer than the usual one, nor where the car falls behind", () => {
    expect(wordsOf(answered([10], 0, { longestDay_km: 10 })).text).not.toContain("longest");
    expect(wordsOf(answered([10], 0, { longestDay_km: 10.1 })).text).toContain("longest");
    const behind = answerFor(inventedUse({ longestDay_km: 50 }), [inventedCandidate(10, { missed_km: 1 })], [[]]);
    expect(wordsOf(behind).text).not.toContain("longest");
  });

  it("says nothing of other packs where there is only one", () => {
    expect(wordsOf(answered([1], 0)).text).not.toContain("packs");
    expect(wordsOf(answered([1, 0.5], 0)).text).toContain("None of these packs is enough; this one goes furthest.");
    expect(wordsOf(answered([4.2, 4.4], 0.1)).text).toContain("None of these packs");
  });

  it("says of a smaller one which is only just so where none is enough with all that is not known", () => {
    expect(wordsOf(answered([3, 4.2], 0.1), 0).text).toContain(
      "None is enough with all that is not known; 4.2 kWh is only just so.",
    );
    // Before that is known nothing is said of it.
    const unknown = answerFor(use, [inventedCandidate(3), inventedCandidate(4.2)], undefined);
    expect(wordsOf(unknown, 0).text).not.toMatch(/None|smallest/);
    expect(wordsOf(unknown, 1).headline).toBe("4.2 kWh: calculating …");
  });

  it("says what may keep the car from driving the road", () => {
    const grip = inventedUnknown(100, 0, 90, { path: "environment.grip_coeff", failsAtHigh: true });
    const { headline, text } = wordsOf(answerFor(use, [inventedCandidate(10)], [[grip]]));
    expect(headline).toBe("10 kWh: only just.");
    expect(text).toContain("With the worst that the road's grip may be, the car does not drive this road.");
  });
});

describe("what cannot be", () => {
  const above = inventedCandidate(20, { pack: { ...inventedCandidate(20).pack, max_V: 999 } });

  it("is a stop with limit and value, and names what is enough instead", () => {
    const answer = answerFor(use, [inventedCandidate(8), above], [[], []]);
    const words = answerWords(answer, 1);
    expect(words.isStop).toBe(true);
    expect(wordsOf(answer, 1).headline).toBe("20 kWh: stop.");
    expect(wordsOf(answer, 1).text).toMatch(/^Full, this pack has 999 V\. .* The smallest that is enough is 8 kWh\.$/);
    expect(wordsOf(answer, 1).text).not.toContain("km");
  });

  it("is a stop beside others of which none is enough", () => {
    expect(wordsOf(answerFor(use, [inventedCandidate(1), above], [[], []]), 1).text).toContain(
      "None of the others is enough.",
    );
  });

  it("is said where no pack may be used at all", () => {
    const answer = answerFor(use, [above], [[]]);
    expect(wordsOf(answer)).toMatchObject({
      headline: "20 kWh: stop.",
      text: expect.stringContaining("None of these packs may be used."),
    });
    expect(largestWords(answer)).toBeUndefined();
    const other = { ...above, name: "other" };
    expect(wordsOf(answerFor(use, [above, other], [[], []])).headline).toBe("20 kWh: stop.");
  });

  it("comes before all else where the car does not drive the road", () => {
    const findings: Candidate["findings"] = [
      { kind: "traceNotFollowed", weight: "warning", sentence: ["behind"] },
      { kind: "doesNotStart", weight: "warning", sentence: ["Does not start: needs 41 Nm in third, has 30."] },
    ];
    const stands = {
      distance_km: 0,
      grade_ratio: 0,
      gear: "third",
      needed_Nm: 41,
      available_Nm: 30,
      limit: "motor" as const,
    };
    const still = inventedCandidate(20, { rangeEnd: "stuck", findings, stands });
    const answer = answerFor(use, [still], [[]]);
    const { headline, text } = wordsOf(answer);
    expect(answerWords(answer).isStop).toBe(false);
    expect(headline).toBe("The car cannot drive this road.");
    expect(text).toMatch(/^Does not start: needs 41 Nm in third, has 30\./);
    expect(text).not.toContain("km");
  });

  it("is said first of a pack with which the car falls behind", () => {
    const { headline, text } = wordsOf(answerFor(use, [inventedCandidate(20, { missed_km: 1 })], [[]]));
    expect(headline).toBe("20 kWh: not enough.");
    expect(text).toMatch(/^The car does not keep up with this road: 16\.7 % of it is missed\./);
  });
});

it("says what the largest pack carries for nothing", () => {
  const words = (...sizes: number[]) => {
    const found = largestWords(answered(sizes, 0));
    return found && messageIn(found, "metric");
  };
  expect(words(5, 20)).toBe("4 to 19 usual days' driving it never uses; 150 kg more than 5 kWh, carried every day");
  expect(words(4, 4.4)).toBe("up to 3 usual days' driving it never uses; 4 kg more than 4 kWh, carried every day");
  expect(words(5)).toBeUndefined();
  // At ten years, in winter, a quarter of 10 km a kWh: 2 kWh short of one more day's 10 km, new 18 km over.
  expect(words(4, 4.08)).toBe("up to 3 usual days' driving it never uses; 1 kg more than 4 kWh, carried every day");
});

describe("a pack that the client asked for", () => {
  // The third of three, beside 5 kWh that are enough: 50 km, 25 in winter, 12 at ten years in winter.
  const [pack] = use.packs;
  const askedFor = (sizes: readonly number[], which: number, changes: Parameters<typeof inventedUse>[0] = {}) =>
    answered(sizes, 0, { packs: sizes.map((_, i) => ({ ...pack, isAskedFor: i === which })), ...changes });

  it("is said to be heavier and not needed where a smaller one is enough", () => {
    expect(wordsOf(askedFor([5, 10, 20], 2)).text).toMatch(
      / 20 kWh, as asked for, weighs 150 kg more and is not needed\.$/,
    );
    expect(wordsOf(askedFor([5, 10, 20], -1)).text).not.toContain("asked for");
  });

  it("is said to do the longest day where the smaller one does not", () => {
    // At ten years in winter 20 kWh go 50 km; 5 kWh go 50 km new, 25 in winter and 12 at ten years.
    const longest = (longestDay_km: number) => wordsOf(askedFor([5, 20], 1, { longestDay_km })).text;
    expect(longest(50)).toMatch(/ but not in winter; with 20 kWh, as asked for, it does\.$/);
    expect(longest(50.1)).toMatch(
      / needs a charge on the way\. 20 kWh, as asked for, weighs 150 kg more and is not needed\.$/,
    );
    expect(longest(25)).toMatch(/ but not in winter at ten years; with 20 kWh, as asked for, it does\.$/);
    expect(longest(12)).toMatch(/ goes on one charge\. 20 kWh, as asked for, weighs 150 kg more and is not needed\.$/);
    expect(wordsOf(askedFor([5, 24], 1, { longestDay_km: 60 })).text).toMatch(
      / needs a charge on the way; 24 kWh, as asked for, would not\.$/,
    );
  });

  it("is said to be out of the question where it may not be used", () => {
    const tooMany = { ...inventedCandidate(20).pack, max_V: 999 };
    const packs = [pack, { ...pack, isAskedFor: true }];
    const sizes = [inventedCandidate(5), inventedCandidate(20, { pack: tooMany })];
    expect(wordsOf(answerFor(inventedUse({ packs }), sizes, [[], []])).text).toMatch(
      / 20 kWh, as asked for, may not be used\.$/,
    );
  });

  it("is said not to be enough where it is not", () => {
    expect(wordsOf(askedFor([3, 5], 0)).text).toMatch(/ 3 kWh, as asked for, is not enough\.$/);
  });

  it("is needed where the one spoken of is only just enough and it is the smallest that is, and heavier than that is not", () => {
    const only = (asked: number) => {
      const packs = [0, 1, 2].map((i) => ({ ...pack, isAskedFor: i === asked }));
      return wordsOf(answered([4.4, 6, 12], 0.1, { packs }), 0).text;
    };
    expect(only(1)).not.toContain("as asked for");
    expect(only(2)).toMatch(/ 12 kWh, as asked for, weighs 76 kg more and is not needed\.$/);
  });

  it("has nothing more said of it where it is the one spoken of", () => {
    expect(wordsOf(askedFor([5, 20], 0)).text).not.toContain("asked for");
    expect(wordsOf(askedFor([5, 20], 1), 1).text).not.toContain("asked for");
  });

  it("is held against in the place of the largest", () => {
    const words = largestWords(askedFor([5, 10, 20], 1));
    // 10 kWh: 100 km new, 25 at ten years in winter, 10 of them used.
    expect(words && messageIn(words, "metric")).toBe(
      "Asked for: 1 to 9 usual days' driving it never uses; 50 kg more than 5 kWh, carried every day",
    );
  });
});

it("holds for the numbers of any answer: every distance short or left is one of them, and the words agree with the verdict", () => {
  const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 12 });
  const share = fc.integer({ min: 0, max: 40 }).map((part) => part / 64);
  const day = fc.integer({ min: 8, max: 2400 }).map((eighths) => eighths / 8);
  let [said, others] = [0, 0];
  fc.assert(
    fc.property(
      sizes,
      share,
      day,
      fc.option(fc.double({ min: 1, max: 600, noNaN: true }), { nil: undefined }),
      (tenths, part, usualDay_km, longestDay_km) => {
        const changes = longestDay_km === undefined ? { usualDay_km } : { usualDay_km, longestDay_km };
        const answer = answered(
          tenths.map((tenth) => tenth / 10),
          part,
          changes,
        );
        answer.packs.forEach((pack, i) => {
          const { headline, text } = wordsOf(answer, i);
          expect(headline).toBe(`${pack.name}: ${pack.verdict}.`);
          expect(text).not.toMatch(/NaN|undefined|Infinity|-\d/);
          const bands = Object.values(pack.left ?? {}).flatMap(({ value, low }) => [value, low]);
          const known = bands.map((left_km) => `${left_km < 0 ? Math.ceil(-left_km) : Math.floor(left_km)}`);
          for (const [, distance] of text.matchAll(/(\d+) km (?:short|left)/g)) {
            said += 1;
            expect(known).toContain(distance);
          }
          const isShort = / short/.test(text);
          expect(isShort).toBe(pack.verdict === "not enough" || pack.verdict === "only just");
          const other =
            /; ([\d.]+ kWh) would not/.exec(text)?.[1] ?? /smallest that is enough is ([\d.]+ kWh)/.exec(text)?.[1];
          if (other === undefined) return;
          others += 1;
          expect(answer.packs.find(({ name }) => name === other)?.verdict).toBe("enough");
        });
      },
    ),
  );
  expect(said).toBeGreaterThan(200);
  expect(others).toBeGreaterThan(20);
});
