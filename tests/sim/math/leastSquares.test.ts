import { describe, expect, it } from "vitest";
import { covarianceOf, leastSquares } from "../../../sim/math/leastSquares.ts";

/**
 * Problems of the Statistical Reference Datasets for non-linear regression with their certified values (NIST StRD, nonlinear regression:
 * Misra1a, BoxBOD, Rat43). Data and certified values from memory; that the certified digits come out of the data vouches for both.
 */
interface Certified {
  readonly name: string;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly model: (b: Float64Array, x: number) => number;
  readonly starts: readonly (readonly number[])[];
  readonly parameters: readonly number[];
  readonly deviations: readonly number[];
  readonly sum: number;
  /** From the far start of BoxBOD a free step lands where its exponential is flat; bounds are what this tool has against that. */
  readonly high?: readonly number[];
}

const certified: readonly Certified[] = [
  {
    name: "Misra1a",
    x: [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
    y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
    model: (b, x) => b[0] * (1 - Math.exp(-b[1] * x)),
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    parameters: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    sum: 1.2455138894e-1,
  },
  {
    name: "BoxBOD",
    x: [1, 2, 3, 5, 7, 10],
    y: [109, 149, 149, 191, 213, 224],
    model: (b, x) => b[0] * (1 - Math.exp(-b[1] * x)),
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    parameters: [2.1380940889e2, 5.4723748542e-1],
    deviations: [1.2354515176e1, 1.0455993237e-1],
    sum: 1.1680088766e3,
    high: [1000, 3],
  },
  {
    name: "Rat43",
    x: Array.from({ length: 15 }, (_, i) => i + 1),
    y: [
      16.08, 33.83, 65.8, 97.2, 191.55, 326.2, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96, 637.56, 717.41,
    ],
    model: (b, x) => b[0] / (1 + Math.exp(b[1] - b[2] * x)) ** (1 / b[3]),
    starts: [
      [100, 10, 1, 1],
      [700, 5, 0.75, 1.3],
    ],
    parameters: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
    deviations: [1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1],
    sum: 8.786404908e3,
  },
];
const cases = certified.flatMap((one) => one.starts.map((start) => ({ ...one, start })));

describe("the certified problems", () => {
  it.each(cases)(
    "$name from $start: parameters and their deviations",
    ({ x, y, model, start, high, parameters, deviations, sum }) => {
      const fit = leastSquares({
        start,
        sizes: start.map(Math.abs),
        ...(high && { high }),
        count: x.length,
        residuals: (b, into) =>
          x.forEach((at, i) => {
            into[i] = model(b, at) - y[i];
          }),
      });
      expect(fit.isConverged).toBe(true);
      // Six digits of the certified eleven: slopes by differences lose the others.
      expect(Math.abs(fit.sum / sum - 1)).toBeLessThan(1e-8);
      const covariance = covarianceOf(fit.jacobian, start.length);
      const variance = fit.sum / (x.length - start.length);
      parameters.forEach((value, k) => {
        expect(Math.abs(fit.parameters[k] / value - 1)).toBeLessThan(1e-6);
        const deviation = Math.sqrt(variance * covariance[k * start.length + k]);
        expect(Math.abs(deviation / deviations[k] - 1)).toBeLessThan(1e-5);
      });
    },
  );
});

describe("bounds and priors", () => {
  it("stops at a bound and lets the others go on to their best beside it", () => {
    // y = a + b x through (0, 1), (1, 3) with b at most 1: a = 1.5 by hand.
    const fit = leastSquares({
      start: [0, 0],
      sizes: [1, 1],
      high: [Number.POSITIVE_INFINITY, 1],
      count: 2,
      residuals: (p, into) => {
        into[0] = p[0] - 1;
        into[1] = p[0] + p[1] - 3;
      },
    });
    expect(fit.parameters[1]).toBe(1);
    expect(fit.parameters[0]).toBeCloseTo(1.5, 8);
  });

  it("weighs a prior against a measurement by their variances", () => {
    // 10 ± 1 known before, 16 ± 2 measured: (10/1 + 16/4)/(1 + 1/4) = 11.2 with a variance of 0.8, in closed form.
    const fit = leastSquares({
      start: [0],
      sizes: [1],
      count: 2,
      residuals: (p, into) => {
        into[0] = p[0] - 10;
        into[1] = (p[0] - 16) / 2;
      },
    });
    expect(fit.parameters[0]).toBeCloseTo(11.2, 8);
    expect(covarianceOf(fit.jacobian, 1)[0]).toBeCloseTo(0.8, 8);
  });
});
