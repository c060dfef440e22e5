import { describe, expect, it } from "vitest";
import { upperTail } from "../../../../sim/math/kalman/aboveZero.ts";
import { throughGate } from "../../../../sim/math/kalman/gate.ts";

const gate = (gateSide: -1 | 1, gateRow: Float64Array, gateLevel: number, gateSpread: number) => ({
  transition: new Float64Array(4),
  shift: new Float64Array(2),
  noise: new Float64Array(4),
  gateSide,
  gateRow,
  gateLevel,
  gateSpread,
});

const density = (x: number) => Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);

/** Share, mean and covariance of what goes through, summed over a grid of both states. */
function summed(mean: number[], covariance: number[], row: number[], level: number, spread: number, side: number) {
  const [a, b] = [Math.sqrt(covariance[0]), covariance[1] / Math.sqrt(covariance[0])];
  const d = Math.sqrt(covariance[3] - b * b);
  const [STEP, REACH] = [0.05, 7];
  const sums = { share: 0, first: [0, 0], second: [0, 0, 0, 0] };
  for (let u = -REACH; u <= REACH; u += STEP) {
    for (let v = -REACH; v <= REACH; v += STEP) {
      const x = [mean[0] + a * u, mean[1] + b * u + d * v];
      const inside = (side * (row[0] * x[0] + row[1] * x[1] - level)) / spread;
      const weight = density(u) * density(v) * STEP * STEP * upperTail(-inside);
      sums.share += weight;
      for (const i of [0, 1]) {
        sums.first[i] += weight * x[i];
        for (const j of [0, 1]) sums.second[2 * i + j] += weight * x[i] * x[j];
      }
    }
  }
  const means = sums.first.map((each) => each / sums.share);
  return {
    share: sums.share,
    means,
    covariance: sums.second.map((each, k) => each / sums.share - means[k >> 1] * means[k & 1]),
  };
}

describe("a Gaussian taken through a gate", () => {
  // Against sums over a grid of steps of 0.05 standard deviations, good to less than a thousandth.
  it.each([-1, 1] as const)("has the share and moments of what goes through on side %d", (side) => {
    const [mean, covariance, row] = [
      [0.4, -0.8],
      [0.5, 0.2, 0.2, 0.9],
      [1, 0.7],
    ];
    const expected = summed(mean, covariance, row, -0.05, 0.5, side);
    const found = { mean: Float64Array.from(mean), covariance: Float64Array.from(covariance) };
    const through = gate(side, Float64Array.from(row), -0.05, 0.5);
    const share = throughGate(2, found.mean, found.covariance, through, new Float64Array(2));
    expect(Math.abs(share - expected.share)).toBeLessThan(0.001);
    found.mean.forEach((each, i) => {
      expect(Math.abs(each - expected.means[i])).toBeLessThan(0.001);
    });
    found.covariance.forEach((each, i) => {
      expect(Math.abs(each - expected.covariance[i])).toBeLessThan(0.001);
    });
  });

  it("goes through whole where it is far on the gate's side, and as good as not at all where it is far on the other", () => {
    const share = (middle: number) =>
      throughGate(
        1,
        Float64Array.of(middle),
        Float64Array.of(1),
        gate(1, Float64Array.of(1), 0, 0.5),
        new Float64Array(1),
      );
    expect(share(8)).toBe(1);
    expect(share(-8)).toBeLessThan(1e-10);
    expect(share(0)).toBeCloseTo(0.5, 6);
  });
});
