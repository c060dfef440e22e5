import { describe, expect, it } from "vitest";
import { adjustModel, type Change, noChange } from "../../../../sim/plan/measured/adjustModel.ts";
import { driveAsMeasured } from "../../../../sim/plan/measured/driveAsMeasured.ts";
import { fitCar } from "../../../../sim/plan/measured/fitCar.ts";
import { observe } from "../../../../sim/plan/measured/observations.ts";
import { parametersOf } from "../../../../sim/plan/measured/parameters.ts";
import { segmentsOf } from "../../../../sim/plan/measured/segments.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { samplesOf } from "./logsByHand.ts";

const job = inventedJob();
const model = prepare(job, job.packs[1]);

/** Starts to so many speeds in m/s, each held for 40 s and braked from, half a minute at rest between. */
function hops(speeds: readonly number[]) {
  const speed_mps = speeds.flatMap((top) => [
    ...Array.from({ length: 30 }, () => 0),
    ...Array.from({ length: Math.ceil(top) }, (_, i) => Math.min(top, i)),
    ...Array.from({ length: 40 }, () => top),
    ...Array.from({ length: Math.ceil(top) }, (_, i) => Math.max(0, top - i)),
  ]);
  const time_s = Float64Array.from(speed_mps, (_, i) => i);
  return [{ start_s: 0, trace: { id: "hops", title: "hops", time_s, speed_mps: Float64Array.from(speed_mps) } }];
}

/** The fit of a log without noise of a car that differs from its job by this, its ammeter off by so much. */
function fitOf(change: Partial<Change>, parts = hops([8, 15, 22, 11, 18]), { gain = 1, zero_A = 0 } = {}) {
  const truth = driveAsMeasured(adjustModel(model, { ...noChange, ...change }), parts, 0.9);
  const predicted = driveAsMeasured(model, parts, 0.9);
  const rows = truth.count - 1;
  const amps = Array.from(truth.current_A.subarray(0, rows), (each) => gain * each + zero_A);
  const samples = samplesOf(Array.from(truth.voltage_V.subarray(0, rows)), amps, {
    power_W: Float64Array.from(amps, (each, k) => each * truth.voltage_V[k]),
  });
  const segments = segmentsOf(predicted);
  const observations = observe(predicted, segments, samples, model, true);
  const fit = fitCar({ model, parts, startSoc_frac: 0.9, samples, observations, parameters: parametersOf(job, model) });
  const value = (id: string) => fit.fitted.find((each) => each.id === id);
  return { ...fit, value };
}

describe("a car built otherwise than its job", () => {
  const found = fitOf({ rolling_ratio: 1.3, accessories_W: 150, regen_ratio: 0.6 });
  it("is found in what its log carries, each within its band", () => {
    const truth = { rolling: 1.3, accessories: 150, regen: 0.6 };
    for (const [id, expected] of Object.entries(truth)) {
      const fitted = found.value(id);
      expect(fitted?.low, id).toBeLessThan(expected);
      expect(fitted?.high, id).toBeGreaterThan(expected);
      // Without noise it is near in the middle of it: to a fifth of half the band.
      const half = ((fitted?.high ?? 0) - (fitted?.low ?? 0)) / 2;
      expect(Math.abs((fitted?.value ?? 0) - expected), id).toBeLessThan(0.3 * half);
      expect(fitted?.ownHalf, id).toBeLessThanOrEqual(half * (1 + 1e-9));
    }
  });
  it("has the change that its values mean", () => {
    const { change } = found;
    expect(change.rolling_ratio).toBe(found.value("rolling")?.value);
    expect(change.accessories_W).toBe(found.value("accessories")?.value);
    expect(change.regen_ratio).toBe(found.value("regen")?.value);
  });
  it("leaves what the log does not carry, its ammeter above all, and is left with next to nothing", () => {
    expect(found.left).toContain("gain");
    expect(found.left).toContain("zero");
    expect(found.fitted.length + found.left.length).toBeLessThanOrEqual(9);
    expect(found.misfit_ratio).toBeLessThan(0.5);
    expect(found.segments).toBeGreaterThan(15);
  });
});

describe("a car built as its job", () => {
  it("is found to be that, and no band leaves it out", () => {
    const { fitted, misfit_ratio } = fitOf({});
    expect(fitted.length).toBeGreaterThan(0);
    for (const { id, value, low, high, start } of fitted) {
      expect(Math.abs(value - start), id).toBeLessThan(id === "accessories" ? 1 : 0.01);
      expect(low, id).toBeLessThan(start);
      expect(high, id).toBeGreaterThan(start);
    }
    expect(misfit_ratio).toBeLessThan(0.2);
  });
});

it("takes a value to its bound where the log asks for more: no car draws less than nothing", () => {
  const { value } = fitOf({ accessories_W: -500 });
  const drawn_W = job.accessories.standing_W / job.accessories.dcdcEfficiency_frac;
  expect(value("accessories")?.value).toBeCloseTo(-drawn_W, 0);
  expect(value("accessories")?.low).toBeGreaterThanOrEqual(-drawn_W - 1e-9);
});

it("fits nothing to fewer than eight segments", () => {
  const short = fitOf({ rolling_ratio: 1.3 }, hops([12]));
  expect(short.segments).toBeLessThan(8);
  expect(short.fitted).toEqual([]);
  expect(short.left).toHaveLength(9);
  expect(short.change).toEqual(noChange);
  expect(short.misfit_ratio).toBe(1);
});
