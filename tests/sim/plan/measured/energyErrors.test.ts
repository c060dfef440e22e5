import { describe, expect, it } from "vitest";
import { type DriveErrors, EVER, energyErrors, factorOf } from "../../../../sim/plan/measured/energyErrors.ts";
import type { PackSamples } from "../../../../sim/plan/measured/packSamples.ts";
import type { Doing, Segment } from "../../../../sim/plan/measured/segments.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { driveOf, samplesOf, times } from "./logsByHand.ts";

// A car of 1400 kg at 10 m/s; ten seconds a segment, volts of 100.
const job = bareJob();
const model = prepare(job, job.packs[0]);
const m_kg = model.inertia_kg;
const segment = (doing: Doing, from: number, to: number): Segment => ({ doing, from, to });
const steady = driveOf(times(21, 10), { power_W: times(21, 2000) });
const standing = driveOf(times(21, 0), { power_W: times(21, 2000) });
const samples = samplesOf(times(20, 100), times(20, 30));
const exact: DriveErrors = { speed_mps: 0, elevation_m: 0, lasts_s: 30, lasts_m: EVER, model_frac: 0 };

/** Covariance of the energies, from its factor: L Lᵀ. */
function covarianceOf(
  segments: readonly Segment[],
  drive = standing,
  size: DriveErrors = exact,
  of: PackSamples = samples,
) {
  const segmentOf = Int32Array.from(of.row, (row) => segments.findIndex(({ from, to }) => row >= from && row < to));
  const errors = energyErrors(drive, segments, of, segmentOf, model, true);
  const lower = factorOf(errors, size);
  const n = segments.length;
  return Array.from({ length: n }, (_, a) =>
    Array.from({ length: n }, (_, b) => {
      let sum = 0;
      for (let k = 0; k <= Math.min(a, b); k++) sum += lower[a * n + k] * lower[b * n + k];
      return sum;
    }),
  );
}

/** Each sample of 1 s: 100 V times half an ampere. */
const noiseSquared = (count: number) => count * 50 ** 2;
/** A fifth of a second of 2 kW. */
const clockSquared = 400 ** 2;

describe("how far an energy may be off", () => {
  it("standing is what the logger's samples and the clocks leave open", () => {
    const [[variance]] = covarianceOf([segment("standing", 0, 10)]);
    expect(variance).toBeCloseTo(noiseSquared(10) + 2 * clockSquared + 1, 6);
  });
  it("has a share of what goes through, four times as much braking and none standing", () => {
    const share = (doing: Doing) =>
      covarianceOf([segment(doing, 0, 10)], standing, { ...exact, model_frac: 0.03 })[0][0] -
      (noiseSquared(10) + 2 * clockSquared + 1);
    expect(share("cruising")).toBeCloseTo((0.03 * 30_000) ** 2, 3);
    expect(share("braking")).toBeCloseTo((0.12 * 30_000) ** 2, 3);
    expect(share("standing")).toBeCloseTo(0, 3);
  });
  it("has the step from one second's power to the next, three tenths of it lost between clocks", () => {
    const stepping = driveOf(times(21, 0), { power_W: [...times(5, 2000), ...times(16, 3000)] });
    const [[variance]] = covarianceOf([segment("standing", 0, 10)], stepping);
    // One step of 1 kW; and clocks meet 2 kW at the beginning and 3 kW at the end.
    expect(variance).toBeCloseTo(noiseSquared(10) + 300 ** 2 + 400 ** 2 + 600 ** 2 + 1, 6);
  });
});

describe("where segments meet", () => {
  const two = [segment("standing", 0, 10), segment("standing", 10, 20)];
  const moving = [segment("cruising", 0, 10), segment("cruising", 10, 20)];
  const ownSquared = noiseSquared(10) + 2 * clockSquared + 1;

  it("what is wrong with clocks is taken from one and given to the other", () => {
    const [[, shared]] = covarianceOf(two);
    expect(shared).toBeCloseTo(-clockSquared, 6);
    const apart = [segment("standing", 0, 9), segment("standing", 10, 20)];
    expect(covarianceOf(apart)[0][1]).toBeCloseTo(0, 6);
  });
  it("so is what is wrong with speed, m v σ", () => {
    // 1400 kg: 10 m/s to a tenth are 1400 J.
    const speedSquared = (m_kg * 10 * 0.1) ** 2;
    const [[own, shared]] = covarianceOf(moving, steady, { ...exact, speed_mps: 0.1 });
    expect(shared / -(speedSquared + clockSquared)).toBeCloseTo(1, 6);
    expect(own / (ownSquared + 2 * speedSquared)).toBeCloseTo(1, 6);
    const apart = [segment("cruising", 0, 9), segment("cruising", 10, 20)];
    expect(covarianceOf(apart, steady, { ...exact, speed_mps: 0.1 })[0][1]).toBeCloseTo(0, 3);
  });
  it("so is what is wrong with height, m g σ, the less the longer it lasts", () => {
    const heightSquared = (m_kg * 9.80665 * 2) ** 2;
    // Ends of a segment are 9 s apart, its neighbour's 1 s further on: Matern's law of order 3/2 by hand.
    const together = (t_s: number) => (1 + t_s / 30) * Math.exp(-t_s / 30);
    const [[own, shared]] = covarianceOf(moving, steady, { ...exact, elevation_m: 2 });
    expect((own - ownSquared) / (heightSquared * 2 * (1 - together(9)))).toBeCloseTo(1, 6);
    const neighbourSquared = heightSquared * (2 * together(10) - together(1) - together(19));
    expect((shared + clockSquared) / neighbourSquared).toBeCloseTo(1, 6);
    // The same by distance: the rows' ends lie 10 m apart.
    const [[alongRoad]] = covarianceOf(moving, steady, { ...exact, elevation_m: 2, lasts_s: EVER, lasts_m: 300 });
    expect((alongRoad - ownSquared) / (own - ownSquared)).toBeCloseTo(1, 6);
    const [[lasting]] = covarianceOf(moving, steady, { ...exact, elevation_m: 2, lasts_s: 300 });
    expect(lasting - ownSquared).toBeLessThan(0.02 * (own - ownSquared));
  });
  it("a stand has no error of height, and those before and after it meet at one place however long it lasts", () => {
    const stop = driveOf([...times(10, 10), ...times(10, 0), ...times(11, 10)], { power_W: times(31, 0) });
    const three = [segment("cruising", 0, 10), segment("standing", 10, 20), segment("cruising", 20, 30)];
    const thirty = samplesOf(times(30, 100), times(30, 30));
    const [first, second] = covarianceOf(three, stop, { ...exact, elevation_m: 2 }, thirty);
    expect(second[1] / (noiseSquared(10) + 1)).toBeCloseTo(1, 6);
    expect(first[1]).toBeCloseTo(0, 3);
    const heightSquared = (m_kg * 9.80665 * 2) ** 2;
    const together = (t_s: number) => (1 + t_s / 30) * Math.exp(-t_s / 30);
    // Nine seconds of moving to the stop, ten after it: the second that starts is one of moving.
    expect(first[2] / (heightSquared * (together(10) - together(1) - together(19) + together(10)))).toBeCloseTo(1, 6);
  });
  it("samples too far apart to add up have what speed and slope leave open at one moment in place of that", () => {
    const sparse = (interval_s: number, off: Partial<DriveErrors>) =>
      covarianceOf(moving, steady, { ...exact, ...off }, { ...samples, interval_s });
    expect(sparse(2, { speed_mps: 0.1 })[0][1]).toBeLessThan(0);
    const [[own, shared]] = sparse(2.1, { speed_mps: 0.1, elevation_m: 2 });
    expect(shared).toBeCloseTo(0, 6);
    // 10 m/s times the car's mass times 0.1 m/s2 and g times 0.008, as squares add.
    const jolt_W = m_kg * 10 * Math.hypot(0.1, 9.80665 * 0.008);
    expect(own / (10 * (50 ** 2 + jolt_W ** 2) + 1)).toBeCloseTo(1, 6);
  });
});

it("takes heights of a log that has some to be better than a road taken as level", () => {
  const usual = (hasHeights: boolean) =>
    energyErrors(steady, [segment("cruising", 0, 10)], samples, new Int32Array(20), model, hasHeights).usual;
  expect(usual(true).elevation_m).toBeLessThan(usual(false).elevation_m);
});
