import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { MotionModel } from "../../sim/math/kalman/motionModel.ts";
import { oneRegime } from "../../sim/math/kalman/oneRegime.ts";
import { sampleSwitching } from "../../sim/math/kalman/sampleSwitching.ts";
import { smooth } from "../../sim/math/kalman/smooth.ts";
import { SwitchingFilter } from "../../sim/math/kalman/switchingFilter.ts";
import type { SwitchingModel } from "../../sim/math/kalman/switchingModel.ts";
import { drawsOf } from "../support/draws.ts";

// Made by data/kalman.py: one joint normal distribution of all states, without any recursion; statsmodels' state-space smoother
// agrees with it to 1e-9.
interface Reference {
  readonly linear: {
    readonly dt: readonly number[];
    readonly value: readonly (number | null)[];
    readonly mean: readonly number[];
    readonly covariance: readonly number[];
    readonly logLikelihood: number;
  };
  readonly switching: {
    readonly value: readonly number[];
    readonly rest: readonly number[];
    readonly state: readonly number[];
    readonly logLikelihood: number;
  };
}
const reference: Reference = JSON.parse(readFileSync(join(import.meta.dirname, "data/kalman.json"), "utf8"));
const { dt, value } = reference.linear;
const EVENTS = value.length;
const N = 3;

const linear: MotionModel = {
  states: N,
  axes: 1,
  events: EVENTS,
  startCovariance: Float64Array.of(9, 0, 0, 0, 4, 0, 0, 0, 4),
  startMean: Float64Array.of(0, 2, 0),
  transition(k, transition, noise) {
    const step = dt[k - 1] ?? Number.NaN;
    const keep = Math.exp(-step / 8);
    transition.set([1, step, 0, 0, 1, 0, 0, 0, keep]);
    noise.set([0.2 * step ** 3, 0.3 * step ** 2, 0, 0.3 * step ** 2, 0.6 * step, 0, 0, 0, 4 * (1 - keep ** 2)]);
  },
  measure(k, observe) {
    const seen = value[k];
    if (typeof seen === "number") observe(Float64Array.of(1, 0, 1), 0.25, Float64Array.of(seen));
  },
};

/** All states of one draw whose standard normals are given one after another. */
function drawn(normals: (i: number) => number): Float64Array {
  const states = new Float64Array(EVENTS * N);
  let i = 0;
  const chance = { uniform: () => 0.5, normal: () => normals(i++) };
  for (const _ of sampleSwitching(oneRegime(linear), 1, chance, (k, at) => states.set(at, k * N)));
  return states;
}

describe("a linear Gaussian model", () => {
  it("has the smoother's means to 1e-9", () => {
    const { mean } = smooth(linear);
    reference.linear.mean.forEach((each, i) => {
      expect(Math.abs(mean[i] - each)).toBeLessThan(1e-9);
    });
  });

  it("has the filter's likelihood", () => {
    const filter = new SwitchingFilter(oneRegime(linear));
    for (let k = 0; k < EVENTS; k++) filter.step(k);
    expect(filter.logLikelihood).toBeCloseTo(reference.linear.logLikelihood, 8);
  });

  it("is sampled with the posterior's mean and covariance to 1e-9", () => {
    // A draw is its mean plus a matrix times its standard normals: noughts give the mean, a single one each column of the matrix.
    const mean = drawn(() => 0);
    reference.linear.mean.forEach((each, i) => {
      expect(Math.abs(mean[i] - each)).toBeLessThan(1e-9);
    });
    const columns = Array.from({ length: EVENTS * N }, (_, c) =>
      drawn((i) => (i === c ? 1 : 0)).map((x, i) => x - mean[i]),
    );
    const size = EVENTS * N;
    for (let a = 0; a < size; a++) {
      for (let b = 0; b < size; b++) {
        const covariance = columns.reduce((sum, column) => sum + column[a] * column[b], 0);
        expect(Math.abs(covariance - (reference.linear.covariance[a * size + b] ?? Number.NaN))).toBeLessThan(1e-9);
      }
    }
  });

  it("has samples whose moments are the posterior's within their own error", () => {
    const draws = 4000;
    const { uniform, normal } = chanceOf(11);
    const sums = new Float64Array(EVENTS * N);
    const squares = new Float64Array(EVENTS * N);
    const take = (k: number, states: Float64Array) => {
      for (let at = 0; at < draws * N; at++) {
        sums[k * N + (at % N)] += states[at];
        squares[k * N + (at % N)] += states[at] ** 2;
      }
    };
    for (const _ of sampleSwitching(oneRegime(linear), draws, { uniform, normal }, take));
    const size = EVENTS * N;
    reference.linear.mean.forEach((mean, i) => {
      const variance = reference.linear.covariance[i * size + i] ?? Number.NaN;
      const found = sums[i] / draws;
      // Five standard errors: of a mean s / sqrt(n), of a variance s^2 sqrt(2 / n).
      expect(Math.abs(found - mean)).toBeLessThan(5 * Math.sqrt(variance / draws));
      expect(Math.abs(squares[i] / draws - found ** 2 - variance)).toBeLessThan(5 * variance * Math.sqrt(2 / draws));
    });
  });
});

describe("a model that switches between moving and rest", () => {
  const { value: seen, rest, state, logLikelihood } = reference.switching;
  const stay = [
    [0.8, 0.2],
    [0.3, 0.7],
  ];
  const model: SwitchingModel = {
    states: 1,
    regimes: 2,
    events: seen.length,
    startWeight: Float64Array.of(0.5, 0.5),
    startMean: Float64Array.of(0),
    startCovariance: Float64Array.of(1),
    positiveState: () => -1,
    passage(_, from, to, { transition, noise }) {
      transition[0] = to === 0 ? 0.95 : 0;
      noise[0] = to === 0 ? 0.5 : 0.0001;
      return stay[from]?.[to] ?? 0;
    },
    measure: (k, observe) => observe(Float64Array.of(1), 0.04, seen[k] ?? Number.NaN),
  };

  it("has the likelihood of all 128 paths together, to 1 %", () => {
    const filter = new SwitchingFilter(model);
    for (let k = 0; k < model.events; k++) filter.step(k);
    // One Gaussian a regime stands for many, which costs a little: 1 % of the density, 0.01 of its logarithm.
    expect(Math.abs(filter.logLikelihood - logLikelihood)).toBeLessThan(0.01);
  });

  it("is at rest as often as all 128 paths say, and where they say, within 0.03", () => {
    const draws = 4000;
    const resting = new Float64Array(model.events);
    const sums = new Float64Array(model.events);
    const take = (k: number, states: Float64Array, regimes: Uint8Array) => {
      for (let draw = 0; draw < draws; draw++) {
        resting[k] += regimes[draw] / draws;
        sums[k] += states[draw] / draws;
      }
    };
    for (const _ of sampleSwitching(model, draws, chanceOf(5), take));
    // 4,000 draws are good to 0.008 in a share of one half; the rest is for the Gaussians brought together.
    rest.forEach((share, k) => {
      expect(Math.abs(resting[k] - share)).toBeLessThan(0.03);
    });
    state.forEach((mean, k) => {
      expect(Math.abs(sums[k] - mean)).toBeLessThan(0.03);
    });
  });
});

function chanceOf(seed: number) {
  const draw = drawsOf(seed);
  return { uniform: () => draw.between(0, 1), normal: () => draw.normal() };
}
