import { expect, it } from "vitest";
import type { CurrentsPlan } from "../../../sim/index.ts";
import currentsAndFuses from "../../../web/sections/currentsAndFuses.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const plan = sectionValues(demoJob()).currentsPlan;

function told(changes: Partial<CurrentsPlan> = {}) {
  const result = currentsAndFuses.compute({ currentsPlan: { ...plan, ...changes }, units: "metric" });
  const tables = [...currentsAndFuses.plot(result, drawing(640))].flatMap((each) => ("rows" in each ? [each] : []));
  return {
    tables,
    points: result.points,
    summary: currentsAndFuses.summary?.(result),
    attention: currentsAndFuses.attention?.(result),
  };
}

const fuse = (rating_A: number): CurrentsPlan["fuse"] => ({ ...plan.fuse, rating_A });
const cable = (parallel: number, carries_A: number): CurrentsPlan["cable"] => ({
  ...plan.cable,
  section_mm2: 50,
  parallel,
  carries_A,
});

it("warns where all cables side by side carry less than the fuse lets through, and not where they carry as much", () => {
  const warning = [expect.stringMatching(/^The cable as fitted carries less than the fuse/)];
  expect(told({ fuse: fuse(250), cable: cable(1, 249) }).attention).toEqual(warning);
  expect(told({ fuse: fuse(250), cable: cable(1, 250) }).attention).toEqual([]);
  expect(told({ fuse: fuse(250), cable: cable(2, 125) }).attention).toEqual([]);
});

it("warns where the pre-charge never gets there, in the words of its starting point", () => {
  const { preCharge } = plan;
  const { time_s: _never, ...chosen } = preCharge.chosen ?? preCharge.rows[0];
  const changes = { fuse: fuse(250), cable: cable(1, 300), preCharge: { ...preCharge, chosen } };
  const { attention, points } = told(changes);
  expect(attention).toHaveLength(1);
  expect(points.map(([sentence]) => sentence)).toContain(attention?.[0]);
  expect(attention?.[0]).toMatch(/^Pre-charge/i);
});

it("says the peak, the current of ten minutes, the fuse and the cable in one line, two figures at most", () => {
  const [first] = plan.greatest;
  const greatest = [
    { ...first, battery_A: 318 },
    { ...first, battery_A: 97.4 },
    { ...first, battery_A: 61.2 },
  ];
  expect(told({ pack: "one", greatest, fuse: fuse(250), cable: cable(1, 300) }).summary).toBe(
    "one: 320 A at most, 61 A over ten minutes; begin with a fuse of 250 A and 50 mm²",
  );
});

it("has the motor's currents only where the job knows them, and a part beside what to begin with", () => {
  const widths = (hasMotorCurrent: boolean) => {
    const [durations] = told({ hasMotorCurrent }).tables;
    return [durations.columns.length, ...new Set(durations.rows.map(({ length }) => length))];
  };
  expect(widths(true)).toEqual([7, 7]);
  expect(widths(false)).toEqual([5, 5]);
  const [, starting] = told().tables;
  for (const [part, begin] of starting.rows) expect(`${part}: ${begin}`).not.toMatch(/^: |: $/);
});
