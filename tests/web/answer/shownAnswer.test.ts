import { expect, it } from "vitest";
import { inputError } from "../../../shared/problems.ts";
import { rememberAnswer, type Standing, shownAnswer } from "../../../web/answer/shownAnswer.ts";
import { EmptyFields } from "../../../web/editing/emptied.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../support/inventedCandidate.ts";

const use = inventedUse();
const ready = <T>(value: T, isLate = false): Standing<T> => ({ state: "ready", value, isLate });
const waiting = { state: "waiting" } as const;
const none = ready({ today: [], drives: [] });
const two = { candidates: [inventedCandidate(4.4), inventedCandidate(6)] };
const doubts = [[inventedUnknown(44, 4.4, 4.4)], [inventedUnknown(60, 6, 6)]];
const used = ready(use);

it("is settled once packs and unknowns are driven", () => {
  const { answer, late } = shownAnswer(used, ready(two), none, ready(doubts));
  expect(late).toBe("none");
  expect(answer?.packs.map(({ verdict }) => verdict)).toEqual(["only just", "enough"]);
});

it("shows kilometres before the first band is known, and no verdict that hangs on it", () => {
  const { answer, late } = shownAnswer(used, ready(two), none, waiting);
  expect(late).toBe("bands");
  expect(answer?.isBandKnown).toBe(false);
  expect(answer?.packs[0]?.left?.tenYearsWinter.value).toBe(1);
});

it("scales the bands of before a change until they are driven again", () => {
  const heavier = { candidates: [inventedCandidate(4.4, { range_km: 42 }), inventedCandidate(6, { range_km: 57 })] };
  const { answer, late } = shownAnswer(used, ready(heavier), none, ready(doubts, true));
  expect(late).toBe("bands");
  expect(answer?.packs[0]?.range?.new).toEqual({ value: 42, low: 42 * 0.9, high: expect.closeTo(42 * 1.1, 9) });
});

it("keeps the answer of before while the packs are driven again, and says that all of it is late", () => {
  const { answer, late } = shownAnswer(used, ready(two, true), none, ready(doubts, true));
  expect(late).toBe("all");
  expect(answer?.packs).toHaveLength(2);
});

it("lets stand what stood while the packs of another job are driven, and puts the new answer together once", () => {
  const shown = rememberAnswer();
  const first = shown(used, ready(two), none, ready(doubts));
  const farther = ready(inventedUse({ usualDay_km: 55 }));
  const late = shown(farther, ready(two, true), none, ready(doubts, true));
  expect(late).toEqual({ ...first, late: "all" });
  expect(late.answer).toBe(first.answer);
  expect(shown(farther, ready(two, true), none, ready(doubts, true))).toBe(late);
  expect(shown(farther, ready(two), none, ready(doubts)).answer).not.toEqual(first.answer);
  // What cannot be read is said at once.
  const error = inputError("noRoad", "the road", "found no road");
  expect(shown({ state: "failed", error }, ready(two, true), none, ready(doubts)).failure).toBeDefined();
});

it("takes the band of many variants once they are driven, and says that it is surer by them", () => {
  const sampled = (isLate = false) => ready([{ ranges_km: [5, 6, 7] }, undefined], isLate);
  const first = shownAnswer(used, ready(two), none, ready(doubts), waiting, waiting, waiting, ready(undefined));
  expect(first).toMatchObject({ late: "none", isSampled: false });
  // 1 km is left, 1.1 km either way: by as little as that many variants may say otherwise.
  expect(first.isChecking).toBe(true);
  const { answer, isSampled, isChecking } = shownAnswer(
    used,
    ready(two),
    none,
    ready(doubts),
    waiting,
    waiting,
    waiting,
    sampled(),
  );
  expect(isSampled).toBe(true);
  expect(isChecking).toBe(false);
  expect(answer?.packs.map((pack) => pack.sampled?.variants)).toEqual([3, undefined]);
  // Not those of before a change.
  const late = shownAnswer(used, ready(two), none, ready(doubts, true), waiting, waiting, waiting, sampled());
  expect(late.answer?.packs[0]).not.toHaveProperty("sampled");
});

it("is checked only where a verdict may become another one", () => {
  const [, far] = doubts;
  const clear = { candidates: [inventedCandidate(6), inventedCandidate(6)] };
  const open = ready(undefined);
  const shown = (of: typeof two, unknowns: typeof doubts) =>
    shownAnswer(used, ready(of), none, ready(unknowns), waiting, waiting, waiting, open).isChecking;
  expect(shown(two, doubts)).toBe(true);
  expect(shown(clear, [far, far])).toBe(false);
  // Until bands are known there is no verdict that could change.
  expect(shownAnswer(used, ready(two), none, waiting).isChecking).toBeUndefined();
});

it("shows none while nothing is driven", () => {
  expect(shownAnswer(used, waiting, none, waiting)).toEqual({ late: "all" });
});

it("says why where something failed", () => {
  const error = inputError("noRoad", "the road", "found no road");
  expect(shownAnswer(used, { state: "failed", error }, none, waiting)).toEqual({
    late: "all",
    failure: { words: "the road: found no road.", isEmpty: false },
  });
  const empty = new EmptyFields(["usualDay_km"]);
  expect(shownAnswer({ state: "failed", error: empty }, waiting, none, waiting).failure).toEqual({
    words: "Waiting for “Usual day”: empty.",
    isEmpty: true,
  });
});
