import { expect, it } from "vitest";
import { motorCurrent_A } from "../../../../sim/plan/currents/motorCurrent.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";

// 100 Nm up to 300 rad/s, 30 kW above that: 50 Nm at 600 rad/s. 400 A at the peak.
const job = bareJob({ motor: { envelope: { kind: "peak", torque_Nm: 100, power_kW: 30 } } });
const { envelope } = prepare(job, job.packs[0]).motor;
const at = (kind: Parameters<typeof motorCurrent_A>[0], torque_Nm: number, speed_radps = 100) =>
  motorCurrent_A(kind, envelope, 400, torque_Nm, speed_radps, 400);

it("goes with torque where magnets make the field, at every speed", () => {
  expect([25, -25, 50, 100].map((torque_Nm) => at("magnetBrushed", torque_Nm))).toEqual([100, 100, 200, 400]);
  expect(at("magnetBrushed", 25, 600)).toBe(100);
});

it("goes with the root of torque in a series-wound motor [LarminieLowry2012, ch. 7]", () => {
  expect(at("seriesBrushed", 25)).toBeCloseTo(200, 9);
  expect(at("seriesBrushed", -25, 600)).toBeCloseTo(200, 9);
});

it("is the share of what the envelope gives at this speed in an alternating-current machine", () => {
  expect(at("induction", 25)).toBeCloseTo(100, 6);
  expect(at("induction", 25, 600)).toBeCloseTo(200, 6);
});

it("is nothing without torque, and never more than at the peak", () => {
  for (const kind of ["magnetBrushed", "seriesBrushed", "induction"] as const) {
    expect(at(kind, 0)).toBe(0);
    expect(at(kind, 120)).toBe(400);
  }
});
