import { describe, expect, it } from "vitest";
import { observe, predictedEnergy_J } from "../../../../sim/plan/measured/observations.ts";
import type { Doing, Segment } from "../../../../sim/plan/measured/segments.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { driveOf, samplesOf, times } from "./logsByHand.ts";

// A car of 1400 kg at 10 m/s; ten seconds a segment, volts of 100.
const job = bareJob();
const model = prepare(job, job.packs[0]);
const segment = (doing: Doing, from: number, to: number): Segment => ({ doing, from, to });
const steady = driveOf(times(21, 10), { power_W: times(21, 2000) });
const samples = samplesOf(times(20, 100), times(20, 30));

describe("the energy of a segment", () => {
  const halves = [segment("cruising", 0, 10), segment("braking", 10, 20)];
  it("is power times the time that its samples stand for", () => {
    const twice = samplesOf(times(20, 100), [...times(10, 30), ...times(10, -5)], {
      weight_s: Float64Array.from(times(20, 2)),
    });
    const { energy_J, time_s } = observe(steady, halves, twice, model, true);
    expect(Array.from(energy_J)).toEqual([60_000, -10_000]);
    expect(Array.from(time_s)).toEqual([20, 20]);
  });
  it("of the model is weighed in the same way", () => {
    const observed = observe(steady, halves, samples, model, true);
    expect(Array.from(predictedEnergy_J(steady, samples, observed))).toEqual([20_000, 20_000]);
  });
  it("is not of samples that lie nearer to the next segment's row, nor of those in none", () => {
    const between = samplesOf(times(2, 100), [10, 20], {
      row: Int32Array.of(9, 9),
      part_frac: Float64Array.of(0.4, 0.6),
      weight_s: Float64Array.of(10, 10),
    });
    expect(Array.from(observe(steady, halves, between, model, true).energy_J)).toEqual([10_000, 20_000]);
    const one = [segment("cruising", 0, 10)];
    const { energy_J, segmentOf } = observe(steady, one, samples, model, true);
    expect(Array.from(energy_J)).toEqual([30_000]);
    expect(Array.from(segmentOf.slice(9, 11))).toEqual([0, -1]);
    expect(Array.from(predictedEnergy_J(steady, samples, observe(steady, one, samples, model, true)))).toEqual([
      20_000,
    ]);
  });
  it("is none where less than half of the segment was logged; those after it move up", () => {
    const from = (row: number) =>
      samplesOf(times(20 - row, 100), times(20 - row, 30), {
        row: Int32Array.from(times(20 - row, 0), (_, k) => row + k),
      });
    expect(observe(steady, halves, from(5), model, true).segments).toHaveLength(2);
    const { segments, segmentOf, energy_J } = observe(steady, halves, from(6), model, true);
    expect(segments.map(({ doing }) => doing)).toEqual(["braking"]);
    expect(Array.from(energy_J)).toEqual([30_000]);
    expect(segmentOf[0]).toBe(-1);
    expect(segmentOf[4]).toBe(0);
  });
});
