import { expect, it } from "vitest";
import { steepestHeld } from "../../../../sim/plan/going/steepestHeld.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** Sine of the steepest slope that 1400 kg hold at 10 m/s, 20 rad a metre, with so much power at the shaft. */
function held(power_W: number, changes: Changes = {}) {
  const job = bareJob(changes);
  const model = prepare(job, job.packs[0]);
  return steepestHeld(model, model.gears[0], 10, power_W);
}

it("is the power over weight times speed where nothing else resists", () => {
  expect(held(20_000)).toBeCloseTo(20_000 / (1400 * 9.81 * 10), 9);
});

it("gives drag in the box and the meshes their part first", () => {
  // 100 Nm at 200 rad/s, 2 of them drag: 98 x 20 x 0.9 N.
  const driveline = { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 2 };
  expect(held(20_000, { driveline })).toBeCloseTo((98 * 18) / (1400 * 9.81), 9);
});

it("is bound by every limit of the step, and nought where the level is too much", () => {
  // 50 Nm: 1000 N.
  const weak = { motor: { envelope: { kind: "peak" as const, torque_Nm: 50, power_kW: 2000 } } };
  expect(held(20_000, weak)).toBeCloseTo(1000 / (1400 * 9.81), 9);
  const roadLoad = { kind: "coastDown" as const, f0_N: 1001, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 };
  expect(held(20_000, { ...weak, vehicle: { roadLoad } })).toBe(0);
});
