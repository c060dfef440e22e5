import { describe, expect, it } from "vitest";
import { observe, predictedEnergy_J, whiten } from "../../../../sim/plan/measured/observations.ts";
import type { PackSamples } from "../../../../sim/plan/measured/packSamples.ts";
import type { Doing, Segment } from "../../../../sim/plan/measured/segments.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { driveOf, samplesOf, times } from "./logsByHand.ts";

// A car of 1400 kg at 10 m/s; ten seconds a segment, volts of 100.
const job = bareJob();
const model = prepare(job, job.packs[0]);
const segment = (doing: Doing, from: number, to: number): Segment => ({ doing, from, to });
const steady = driveOf(times(21, 10), { power_W: times(21, 2000) });
const standing = driveOf(times(21, 0), { power_W: times(21, 2000) });
const samples = samplesOf(times(20, 100), times(20, 30));

/** Covariance of the energies, from its factor: L Lᵀ. */
function covarianceOf(segments: readonly Segment[], drive = standing, hasHeights = true, of: PackSamples = samples) {
  const { lower } = observe(drive, segments, of, model, hasHeights);
  const n = segments.length;
  return Array.from({ length: n }, (_, a) =>
    Array.from({ length: n }, (_, b) => {
      let sum = 0;
      for (let k = 0; k <= Math.min(a, b); k++) sum += lower[a * n + k] * lower[b * n + k];
      return sum;
    }),
  );
}

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

describe("how far an energy may be off", () => {
  // Each sample of 1 s: 100 V times half an ampere. A fifth of a second of 2 kW at either end: 400 J.
  const noiseSquared = 10 * 50 ** 2;
  const clocksSquared = 2 * 400 ** 2;
  it("standing is what the logger's samples and the clocks leave open", () => {
    const [[variance]] = covarianceOf([segment("standing", 0, 10)]);
    expect(variance).toBeCloseTo(noiseSquared + clocksSquared + 1, 6);
  });
  it("has a share of what goes through, 3 % driving and 12 % braking", () => {
    const share = (doing: Doing) => covarianceOf([segment(doing, 0, 10)])[0][0] - noiseSquared - clocksSquared - 1;
    expect(share("cruising")).toBeCloseTo((0.03 * 30_000) ** 2, 3);
    expect(share("braking")).toBeCloseTo((0.12 * 30_000) ** 2, 3);
  });
  it("has the step from one second's power to the next, three tenths of it lost between clocks", () => {
    const stepping = driveOf(times(21, 0), { power_W: [...times(5, 2000), ...times(16, 3000)] });
    const [[variance]] = covarianceOf([segment("standing", 0, 10)], stepping);
    // One step of 1 kW; and clocks meet 2 kW at the beginning and 3 kW at the end.
    expect(variance).toBeCloseTo(noiseSquared + 300 ** 2 + 400 ** 2 + 600 ** 2 + 1, 6);
  });
});

describe("where segments meet", () => {
  const two = [segment("standing", 0, 10), segment("standing", 10, 20)];
  it("what is wrong with clocks is taken from one and given to the other", () => {
    const [[, shared]] = covarianceOf(two);
    expect(shared).toBeCloseTo(-(400 ** 2), 6);
    const apart = [segment("standing", 0, 9), segment("standing", 10, 20)];
    expect(covarianceOf(apart)[0][1]).toBeCloseTo(0, 6);
  });
  it("so is what is wrong with speed, m v σ, and with height, m g σ", () => {
    // 1400 kg: 10 m/s to a tenth are 1400 J; 0.7 m with heights, 4 m without.
    const moving = [segment("cruising", 0, 10), segment("cruising", 10, 20)];
    const m_kg = model.inertia_kg;
    const speedSquared = (m_kg * 10 * 0.1) ** 2;
    const heightSquared = (elevation_m: number) => (m_kg * 9.81 * elevation_m) ** 2;
    const [[own, shared]] = covarianceOf(moving, steady);
    expect(shared / -(speedSquared + 400 ** 2 + heightSquared(0.7))).toBeCloseTo(1, 6);
    const modelSquared = (0.03 * 30_000) ** 2;
    expect(own / (2 * (speedSquared + 400 ** 2 + heightSquared(0.7)) + noise(10) + modelSquared + 1)).toBeCloseTo(1, 6);
    const [[, without]] = covarianceOf(moving, steady, false);
    expect(without / -(speedSquared + 400 ** 2 + heightSquared(4))).toBeCloseTo(1, 6);
  });
  it("a stand between two moving ones has no error of height; they share theirs over it", () => {
    const stop = driveOf([...times(10, 10), ...times(10, 0), ...times(11, 10)], { power_W: times(31, 0) });
    const three = [segment("cruising", 0, 10), segment("standing", 10, 20), segment("cruising", 20, 30)];
    const thirty = samplesOf(times(30, 100), times(30, 30));
    const [first, second] = covarianceOf(three, stop, true, thirty);
    const heightSquared = (model.inertia_kg * 9.81 * 0.7) ** 2;
    expect(first[2] / -heightSquared).toBeCloseTo(1, 6);
    // The speed at row 10 is nought: nothing of it is shared with the stand.
    expect(first[1]).toBeCloseTo(0, 3);
    // The stand's own: its samples, and the speed with which the next begins.
    expect(second[1] / (noise(10) + (model.inertia_kg * 10 * 0.1) ** 2 + 1)).toBeCloseTo(1, 6);
  });
  it("samples too far apart to add up have what speed and slope leave open at one moment in place of that", () => {
    const sparse = (interval_s: number) =>
      covarianceOf([segment("cruising", 0, 10), segment("cruising", 10, 20)], steady, true, { ...samples, interval_s });
    expect(sparse(2)[0][1]).toBeLessThan(0);
    const [[own, shared]] = sparse(2.1);
    expect(shared).toBeCloseTo(0, 6);
    // 10 m/s times the car's mass times 0.1 m/s2 and g times 0.008, as squares add.
    const jolt_W = model.inertia_kg * 10 * Math.hypot(0.1, 9.81 * 0.008);
    expect(own / (10 * (50 ** 2 + jolt_W ** 2) + (0.03 * 30_000) ** 2 + 1)).toBeCloseTo(1, 6);
  });
  const noise = (count: number) => count * 50 ** 2;
});

it("whitens residuals by the factor: L x = r", () => {
  const observed = observe(steady, [segment("standing", 0, 10), segment("standing", 10, 20)], samples, model, true);
  const { lower } = observed;
  const residuals = Float64Array.of(lower[0] * 3, lower[2] * 3 + lower[3] * 5);
  whiten(observed, residuals);
  expect(residuals[0]).toBeCloseTo(3, 9);
  expect(residuals[1]).toBeCloseTo(5, 9);
});
