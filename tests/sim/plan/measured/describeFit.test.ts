import { describe, expect, it } from "vitest";
import { describeFit } from "../../../../sim/plan/measured/describeFit.ts";
import type { Differences } from "../../../../sim/plan/measured/energyDifferences.ts";
import { type EnergyErrors, EVER } from "../../../../sim/plan/measured/energyErrors.ts";
import { NINE_OF_TEN, type Parameter, type ParameterId } from "../../../../sim/plan/measured/parameters.ts";

const parameter = (id: ParameterId, before: number, method?: number): Parameter => ({
  id,
  start: 1,
  before,
  low: 0,
  high: 2,
  ...(method !== undefined && { method }),
});

/** Four energies, each known to 1 J by itself. */
const errors: EnergyErrors = {
  count: 4,
  restSquared: Float64Array.from({ length: 16 }, (_, i) => (i % 5 === 0 ? 1 : 0)),
  fromSpeed_Ns: new Float64Array(4),
  toSpeed_Ns: new Float64Array(4),
  isMet: new Uint8Array(4),
  from_s: new Float64Array(4),
  to_s: new Float64Array(4),
  from_m: new Float64Array(4),
  to_m: new Float64Array(4),
  metre_J: 0,
  throughput_J: new Float64Array(4),
  usual: { speed_mps: 0, elevation_m: 0, lasts_s: 1, lasts_m: EVER, model_frac: 0 },
};
const observations = {
  segments: [],
  energy_J: new Float64Array(4),
  time_s: new Float64Array(4),
  segmentOf: new Int32Array(0),
  errors,
};
const lower = errors.restSquared;

/** Differences that are straight in every value: `left` less each slope times how far its value is from 1. */
function straight(slopes: Partial<Record<ParameterId, readonly number[]>>, left = [0, 0, 0, 0]): Differences {
  return (active, values, into) => {
    for (let i = 0; i < 4; i++)
      into[i] = active.reduce((sum, { id }, k) => sum - (slopes[id]?.[i] ?? 0) * (values[k] - 1), left[i]);
  };
}

const rolling = parameter("rolling", 1e6);
const values = Float64Array.of(1.5);

describe("one value from four energies of slope 5", () => {
  // Nothing is left over at 1.5; the variance is 1 / (4 times 5²), a tenth its root.
  const differences = straight(
    { rolling: [5, 5, 5, 5], mass: [5, 5, 5, 5], drag: [5, 5, -5, -5] },
    [2.5, 2.5, 2.5, 2.5],
  );
  it("has a band of nine in ten as wide as they leave it", () => {
    const [fitted] = describeFit(differences, [rolling], { active: [rolling], values, lower }, observations).fitted;
    expect(fitted.value).toBe(1.5);
    expect(fitted.ownHalf).toBeCloseTo(0.1 * NINE_OF_TEN, 9);
    expect(fitted.high - 1.5).toBeCloseTo(0.1 * NINE_OF_TEN, 9);
    expect(1.5 - fitted.low).toBeCloseTo(0.1 * NINE_OF_TEN, 9);
  });
  it("has what looks exactly like it in its band, one to one, and is said to be mixed with it", () => {
    const mass = parameter("mass", 0.2);
    const drag = parameter("drag", 0.2);
    const all = [rolling, drag, mass];
    const fit = describeFit(differences, all, { active: [rolling], values, lower }, observations);
    const [fitted] = fit.fitted;
    expect(fit.left).toEqual(["drag", "mass"]);
    expect(fitted.alike.map(({ id }) => id)).toEqual(["mass", "drag"]);
    expect(fitted.alike[0].slope_ratio).toBeCloseTo(-1, 9);
    expect(fitted.alike[0].half).toBeCloseTo(0.2 * NINE_OF_TEN, 9);
    // What pulls two of the energies up and two down moves nothing.
    expect(fitted.alike[1].slope_ratio).toBeCloseTo(0, 9);
    expect(fitted.ownHalf).toBeCloseTo(0.1 * NINE_OF_TEN, 9);
    expect(fitted.high - 1.5).toBeCloseTo(Math.hypot(0.1, 0.2) * NINE_OF_TEN, 9);
    expect(fit.mixed).toHaveLength(1);
    expect(fit.mixed[0].ids).toEqual(["rolling", "mass"]);
    expect(fit.mixed[0].correlation).toBeCloseTo(0.2 / Math.hypot(0.1, 0.2), 9);
  });
  it("has in it what the method itself is off by", () => {
    const fitted = parameter("rolling", 1e6, 0.2);
    const [{ ownHalf }] = describeFit(differences, [fitted], { active: [fitted], values, lower }, observations).fitted;
    expect(ownHalf).toBeCloseTo(Math.hypot(0.1, 0.2) * NINE_OF_TEN, 9);
  });
  it("ends where a value may not go", () => {
    const low = { ...rolling, low: 1.45, high: 1.52 };
    const [fitted] = describeFit(differences, [low], { active: [low], values, lower }, observations).fitted;
    expect([fitted.low, fitted.high]).toEqual([1.45, 1.52]);
  });
});

it("widens bands by what is left over, from one and a half times what was thought on", () => {
  // At 1.5 these are off by 6 and -6 J by turns, of four with one fitted: root of 4 times 36 over 3.
  const differences = straight({ rolling: [5, 5, 5, 5] }, [8.5, -3.5, 8.5, -3.5]);
  const fit = describeFit(differences, [rolling], { active: [rolling], values, lower }, observations);
  const misfit_ratio = Math.sqrt((4 * 36) / 3);
  expect(fit.misfit_ratio).toBeCloseTo(misfit_ratio, 9);
  expect(fit.fitted[0].ownHalf).toBeCloseTo((0.1 * NINE_OF_TEN * misfit_ratio) / 1.5, 9);
  expect(fit.segments).toBe(4);
});

it("says which of two fitted values hang on each other", () => {
  const drag = parameter("drag", 1e6);
  // Their slopes lie 35 degrees apart.
  const differences = straight({ rolling: [5, 5, 5, 5], drag: [8, 0, 4, 4] });
  const active = [rolling, drag];
  const { mixed } = describeFit(differences, active, { active, values: Float64Array.of(1, 1), lower }, observations);
  const both = 5 * (8 + 0 + 4 + 4);
  const correlation = -both / Math.sqrt(100 * (64 + 16 + 16));
  expect(mixed).toHaveLength(1);
  expect(mixed[0].ids).toEqual(["drag", "rolling"]);
  expect(mixed[0].correlation).toBeCloseTo(correlation, 9);
  // With one more of drag, rolling comes out lower by what the energies then leave it.
  expect(mixed[0].slope_ratio).toBeCloseTo(-both / (64 + 16 + 16), 9);
});
