import { describe, expect, it } from "vitest";
import { startTorque, steepestStart } from "../../../../sim/plan/going/startTorque.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** 20 turns of radians a metre at 0.9: 18 N at the tyres a newton metre; 1400 kg, 13734 N; rolling 137.34 N on the level. */
const car: Changes = {
  vehicle: {
    kerb_kg: 1399,
    tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
    roadLoad: { kind: "physical", drag_coeff: 0, frontalArea_m2: 0, wheelDrag_Nm: 6 },
  },
  driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 2 },
  motor: { envelope: { kind: "peak", torque_Nm: 120, power_kW: 60 } },
};
const prepared = (changes: Changes) => {
  const job = bareJob({ ...car, ...changes });
  return prepare(job, job.packs[0]);
};
const started = (sinSlope: number, changes: Changes = {}) => {
  const model = prepared(changes);
  return startTorque(model, model.gears[0], sinSlope);
};

it("needs what holds the car on the slope, with rolling, wheel-side drag and the drag in the box", () => {
  const byHand = (sinSlope: number) =>
    (13_734 * sinSlope + 137.34 * Math.sqrt(1 - sinSlope ** 2) + 6 / 0.3) / (20 * 0.9) + 2;
  for (const sinSlope of [0, 0.1, 0.25]) expect(started(sinSlope).needed_Nm).toBeCloseTo(byHand(sinSlope), 3);
});

describe("has what the tightest limit lets through", () => {
  it("of the motor", () => {
    const { available_Nm, limit } = started(0.1);
    expect(available_Nm).toBeCloseTo(120, 3);
    expect(limit).toBe("motor");
  });
  it("of the controller", () => {
    const { available_Nm, limit } = started(0.1, {
      controller: { min_V: 0, max_V: 1500, torqueCap_Nm: 55, regen: { isOn: false } },
    });
    expect(available_Nm).toBeCloseTo(55, 3);
    expect(limit).toBe("controller");
  });
  it("of the gearbox", () => {
    const { available_Nm, limit } = started(0.1, { driveline: { ...car.driveline, limits: { gearboxInput_Nm: 80 } } });
    expect(available_Nm).toBeCloseTo(80, 3);
    expect(limit).toBe("driveline");
  });
  it("of the tyres, whose driven axle gains load on the slope", () => {
    const { available_Nm, limit } = started(0.1, {
      vehicle: {
        ...car.vehicle,
        balance: { wheelbase_mm: 2400, gravityHeight_mm: 600, frontShare_frac: 0.6 },
      },
      environment: { grip_coeff: 0.3 },
    });
    // mu (m g (0.4 cos + h/L sin)) at 18 N a newton metre, and the drag in the box.
    const grip_N = 0.3 * 13_734 * (0.4 * Math.sqrt(0.99) + 0.25 * 0.1);
    expect(available_Nm).toBeCloseTo(grip_N / 18 + 2, 2);
    expect(limit).toBe("grip");
  });
  it("nothing, where the controller is below its lowest voltage", () => {
    const { available_Nm, needed_Nm, limit } = started(0, {
      controller: { min_V: 500, max_V: 900, regen: { isOn: false } },
    });
    expect(available_Nm).toBe(0);
    expect(needed_Nm).toBeGreaterThan(10);
    expect(limit).toBe("controller");
  });
});

it("starts on the slope that the closed form has, and on no steeper one", () => {
  const model = prepared({});
  const steepest = steepestStart(model, model.gears[0]);
  // (120 - 2) 18 = 13734 sin + 137.34 cos + 20
  expect(13_734 * steepest + 137.34 * Math.sqrt(1 - steepest ** 2) + 20).toBeCloseTo(118 * 18, 2);
  expect(started(steepest + 1e-4).needed_Nm).toBeGreaterThan(120);
});

it("starts on no slope at all where it does not start on the level", () => {
  const model = prepared({ motor: { envelope: { kind: "peak", torque_Nm: 8, power_kW: 60 } } });
  expect(steepestStart(model, model.gears[0])).toBe(0);
});
