import { expect, it } from "vitest";
import { currentSignQuestion } from "../../../../sim/route/table/currentSign.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

const fixesOf = (rows: readonly (readonly [speed_mps: number, current_A: number])[]) =>
  madeLog(rows.map(([speed_mps, packCurrent_A], i) => ({ time_s: i, speed_mps, extras: { packCurrent_A } }))).fixes;

it("counts the way that most amps go while the car moves as leaving the pack", () => {
  const negative = fixesOf([
    [10, -80],
    [10, -60],
    [10, 40],
  ]);
  expect(currentSignQuestion(negative, undefined)).toMatchObject({ factor: -1, question: { decided: true } });
});

it("leaves standing aside, where a pack may be charging", () => {
  const charged = fixesOf([
    [0, -500],
    [10, 80],
  ]);
  expect(currentSignQuestion(charged, undefined)?.factor).toBe(1);
});

it("asks where amps either way balance to a tenth, unless the sign is given", () => {
  const balanced = fixesOf([
    [10, 50],
    [10, -49],
  ]);
  expect(currentSignQuestion(balanced, undefined)?.question.decided).toBe(false);
  expect(currentSignQuestion(balanced, -1)).toMatchObject({
    factor: -1,
    question: { decided: true, evidence: "given" },
  });
  expect(currentSignQuestion(madeLog([{ time_s: 0, speed_mps: 10 }]).fixes, undefined)).toBeUndefined();
});
