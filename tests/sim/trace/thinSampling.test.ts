import { expect, it } from "vitest";
import { prepare } from "../../../sim/step/prepare.ts";
import { run } from "../../../sim/step/run.ts";
import { resample } from "../../../sim/trace/resample.ts";
import { fromRestToRest } from "../../../sim/trace/restToRest.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import { thinSampling } from "../../../sim/trace/thinSampling.ts";
import { traceOf } from "../../support/bareCar.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";

it("has no word for samples up to 2 s apart, nor for gaps at rest", () => {
  expect(thinSampling(cycleTrace("udds", cycleTexts))).toBeUndefined();
  expect(thinSampling(resample(cycleTrace("udds", cycleTexts), 2))).toBeUndefined();
  expect(
    thinSampling(
      traceOf([
        [0, 0],
        [100, 0],
        [101, 5],
        [102, 0],
        [500, 0],
      ]),
    ),
  ).toBeUndefined();
});

it("reports the spacing of a thin road and what it likely costs", () => {
  const found = thinSampling(resample(cycleTrace("udds", cycleTexts), 10));
  expect(found).toMatchObject({ share_frac: 1, every_s: 10, least_frac: 0.013, most_frac: 0.078 });
});

it("takes a straight line between the spacings of its table, and the last beyond", () => {
  const each = (every_s: number) =>
    thinSampling(
      traceOf([
        [0, 50],
        [every_s, 60],
        [2 * every_s, 50],
      ]),
    );
  expect(each(15)?.most_frac).toBeCloseTo(0.5 * (0.078 + 0.123), 12);
  expect(each(15)?.least_frac).toBeCloseTo(0.5 * (0.013 + 0.02), 12);
  expect(each(600)?.most_frac).toBe(0.213);
});

it("counts a gap by its share of the time under way", () => {
  // 20 s in one gap, 60 s in seconds, and a stand that is neither.
  const rows: [number, number][] = [
    [0, 50],
    [20, 50],
  ];
  for (let s = 21; s <= 80; s++) rows.push([s, s === 80 ? 0 : 50]);
  rows.push([400, 0]);
  const found = thinSampling(traceOf(rows));
  expect(found?.share_frac).toBe(0.25);
  expect(found?.every_s).toBe(20);
  expect(found?.most_frac).toBeCloseTo(0.25 * 0.123, 12);
});

it("gives the gap up to which half of the thin time lies", () => {
  expect(
    thinSampling(
      traceOf([
        [0, 50],
        [3, 50],
        [6, 50],
        [9, 50],
        [29, 50],
      ]),
    )?.every_s,
  ).toBe(20);
  expect(
    thinSampling(
      traceOf([
        [0, 50],
        [20, 50],
        [23, 50],
        [26, 50],
        [46, 50],
        [49, 50],
      ]),
    )?.every_s,
  ).toBe(20);
});

it("leaves out the stretches added from and to rest, which are straight lines on purpose", () => {
  const rows: [number, number][] = Array.from({ length: 31 }, (_, s) => [s, 90]);
  expect(thinSampling(fromRestToRest(traceOf(rows)))).toBeUndefined();
});

it("has the numbers that thinned cycles give", () => {
  const job = demoJob();
  const model = prepare(job, job.packs[job.packs.length - 1]);
  for (const every_s of [5, 10, 30]) {
    for (const [id, key] of [
      ["hwfet", "least_frac"],
      ["udds", "most_frac"],
    ] as const) {
      const whole = cycleTrace(id, cycleTexts);
      const thin = resample(whole, every_s);
      const [a, b] = [whole, thin].map((trace) => run(model, trace).totals).map((t) => t.terminal_J / t.distance_m);
      // A point: the table is a guide, and the demo's own figures may move.
      expect(Math.abs(1 - b / a - (thinSampling(thin)?.[key] ?? 0)), `${id} each ${every_s} s`).toBeLessThan(0.01);
    }
  }
});
