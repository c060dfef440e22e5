import { describe, expect, it } from "vitest";
import { envelopeTorque_Nm } from "../../../sim/motor/envelope.ts";
import { motorLoss_W } from "../../../sim/motor/loss.ts";
import { prepareController, prepareMotor } from "../../../sim/motor/prepareMotor.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

/** A hundred, and three hundred, radians a second, in turns a minute. */
const [SLOW_rpm, FAST_rpm] = [3000 / Math.PI, 9000 / Math.PI];
const motorWith = (changes: NonNullable<Changes["motor"]>, countsRotor = true) =>
  prepareMotor(bareJob({ motor: changes }).motor, countsRotor);

it("turns speeds in rpm into radians a second", () => {
  const motor = motorWith({ maxSpeed_rpm: FAST_rpm, rollBack_rpm: SLOW_rpm });
  expect(motor.max_radps).toBeCloseTo(300, 9);
  expect(motor.rollBack_radps).toBeCloseTo(100, 9);
});

it("has a rotor of its own only where what turns is told by its parts", () => {
  expect(motorWith({ rotorInertia_kgm2: 0.2 }).rotorInertia_kgm2).toBe(0.2);
  expect(motorWith({ rotorInertia_kgm2: 0.2 }, false).rotorInertia_kgm2).toBe(0);
});

describe("an envelope", () => {
  it("by its peaks has its power in watts", () => {
    const { envelope } = motorWith({ envelope: { kind: "peak", torque_Nm: 120, power_kW: 12 }, reference_V: 100 });
    expect(envelopeTorque_Nm(envelope, 200, 100)).toBeCloseTo(60, 9);
  });
  it("by points has its speeds in radians a second", () => {
    const speed_rpm = [SLOW_rpm, FAST_rpm];
    const { envelope } = motorWith({ envelope: { kind: "points", speed_rpm, torque_Nm: [90, 50] }, reference_V: 100 });
    expect(envelopeTorque_Nm(envelope, 200, 100)).toBeCloseTo(70, 9);
  });
});

describe("losses", () => {
  it("by the law of four terms are the job's own coefficients", () => {
    const { loss } = motorWith({
      loss: { kind: "fourTerm", copper_coeff: 0.5, iron_coeff: 1, windage_coeff: 1e-6, constant_W: 100 },
    });
    expect(motorLoss_W(loss, 20, 200)).toBeCloseTo(0.5 * 400 + 200 + 8 + 100, 9);
  });

  it("by a table that begins at no torque are the same for braking", () => {
    const rows = [
      [100, 300],
      [200, 600],
    ];
    const { loss } = motorWith({
      loss: { kind: "lossTable", speed_rpm: [SLOW_rpm, FAST_rpm], torque_Nm: [0, 50], loss_W: rows },
    });
    expect(motorLoss_W(loss, 25, 200)).toBeCloseTo(300, 9);
    expect(motorLoss_W(loss, -25, 200)).toBeCloseTo(300, 9);
  });

  it("by a table that holds braking are the table's own for braking", () => {
    const rows = [
      [900, 100, 300],
      [1000, 200, 600],
    ];
    const { loss } = motorWith({
      loss: { kind: "lossTable", speed_rpm: [SLOW_rpm, FAST_rpm], torque_Nm: [-50, 0, 50], loss_W: rows },
    });
    expect(motorLoss_W(loss, -50, 100)).toBeCloseTo(900, 9);
    expect(motorLoss_W(loss, 50, 100)).toBeCloseTo(300, 9);
  });

  it("by an efficiency map are power over efficiency less power, for braking as for driving", () => {
    const { loss } = motorWith({
      loss: {
        kind: "efficiencyMap",
        speed_rpm: [SLOW_rpm, FAST_rpm],
        torque_Nm: [20, 40],
        efficiency_frac: [
          [0.8, 0.9],
          [0.85, 0.95],
        ],
      },
    });
    expect(motorLoss_W(loss, 20, 100)).toBeCloseTo(2000 / 0.8 - 2000, 8);
    expect(motorLoss_W(loss, 40, 300)).toBeCloseTo(12_000 / 0.95 - 12_000, 8);
    expect(motorLoss_W(loss, -40, 300)).toBeCloseTo(12_000 / 0.95 - 12_000, 8);
  });
});

describe("a controller", () => {
  const controllerWith = (controller: NonNullable<Changes["controller"]>, canRegenerate = true) => {
    const job = bareJob({ controller, motor: { canRegenerate } });
    return prepareController(job.controller, job.motor);
  };

  it("limits nothing that the job says nothing of, and rolls back at its own voltages", () => {
    const free = controllerWith({ regen: { isOn: true } });
    const limits = [free.torque_Nm, free.power_W, free.current_A, free.regen_Nm, free.regen_W, free.regen_A];
    expect(limits).toEqual(limits.map(() => Number.POSITIVE_INFINITY));
    expect([free.rollBackBelow_V, free.rollBackAbove_V]).toEqual([0, 1500]);
  });

  it("has powers in watts and speeds in metres a second", () => {
    const held = controllerWith({
      torqueCap_Nm: 90,
      power_kW: 30,
      current_A: 200,
      rollBackBelow_V: 320,
      rollBackAbove_V: 440,
      regen: { isOn: true, torque_Nm: 40, power_kW: 8, current_A: 60, fadeNone_kmh: 9, fadeFull_kmh: 18 },
    });
    expect(held).toMatchObject({
      torque_Nm: 90,
      power_W: 30_000,
      current_A: 200,
      rollBackBelow_V: 320,
      rollBackAbove_V: 440,
      regen_Nm: 40,
      regen_W: 8000,
      regen_A: 60,
    });
    expect(held.fadeNone_mps).toBeCloseTo(2.5, 12);
    expect(held.fadeFull_mps).toBeCloseTo(5, 12);
  });

  it("brakes with no torque where braking is off, or the motor cannot", () => {
    expect(controllerWith({ regen: { isOn: false, torque_Nm: 40 } }).regen_Nm).toBe(0);
    expect(controllerWith({ regen: { isOn: true, torque_Nm: 40 } }, false).regen_Nm).toBe(0);
  });
});
