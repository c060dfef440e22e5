import { expect, it } from "vitest";
import { motorSurface } from "../../../../sim/plan/drive/motorSurface.ts";
import { bareJob } from "../../../support/bareCar.ts";

const job = bareJob({
  motor: {
    envelope: { kind: "peak", torque_Nm: 100, power_kW: 30 },
    maxSpeed_rpm: 6000,
    rollBack_rpm: 600,
    loss: { kind: "fourTerm", copper_coeff: 0.3, iron_coeff: 0.2, windage_coeff: 0, constant_W: 100 },
  },
  controller: { torqueCap_Nm: 80, power_kW: 20, regen: { isOn: true } },
  driveline: { limits: { gearboxInput_Nm: 70 } },
});
const surface = motorSurface(job, 0);
const at = (speedIndex: number, torqueIndex: number) => torqueIndex * surface.speed_rpm.length + speedIndex;

it("spans rest to top speed and full braking to full driving", () => {
  expect(surface.speed_rpm[0]).toBe(0);
  expect(surface.speed_rpm[surface.speed_rpm.length - 1]).toBeCloseTo(6000, 6);
  expect([surface.torque_Nm[0], surface.torque_Nm[surface.torque_Nm.length - 1]]).toEqual([-100, 100]);
});

it("has the law's loss and its efficiency either way, and no NaN at rest or without torque", () => {
  const i = 40;
  const speed_radps = (surface.speed_rpm[i] * Math.PI) / 30;
  const j = 60;
  const torque_Nm = surface.torque_Nm[j];
  const loss_W = 0.3 * torque_Nm ** 2 + 0.2 * speed_radps + 100;
  expect(surface.loss_W[at(i, j)]).toBeCloseTo(loss_W, 6);
  const shaft_W = torque_Nm * speed_radps;
  expect(surface.efficiency_frac[at(i, j)]).toBeCloseTo(shaft_W / (shaft_W + loss_W), 9);
  expect(surface.efficiency_frac[at(i, 20)]).toBeCloseTo(1 - loss_W / shaft_W, 9);
  expect([...surface.loss_W, ...surface.efficiency_frac].every(Number.isFinite)).toBe(true);
});

it("has at every node the law's loss, none at rest, and the envelope at its own speed", () => {
  for (const [i, speed_rpm] of surface.speed_rpm.entries()) {
    const speed_radps = (speed_rpm * Math.PI) / 30;
    for (const [j, torque_Nm] of surface.torque_Nm.entries()) {
      const law_W = 0.3 * torque_Nm ** 2 + 0.2 * speed_radps + 100;
      expect(surface.loss_W[at(i, j)]).toBeCloseTo(i === 0 ? 0 : law_W, 6);
    }
    // 100 Nm up to 300 rad/s, 30 kW above, less in the last 600 rpm; 400 V is both reference and nominal voltage.
    const rollBack = Math.min(1, (6000 - speed_rpm) / 600);
    const envelope_Nm = Math.min(100, speed_radps > 0 ? 30_000 / speed_radps : 100) * rollBack;
    expect(surface.envelope[i].speed_rpm).toBe(speed_rpm);
    expect(surface.envelope[i].torque_Nm).toBeCloseTo(envelope_Nm, 6);
  }
  expect(surface.maxSpeed_rpm).toBeCloseTo(6000, 9);
});

it("has no efficiency where braking gives nothing back, and none without power", () => {
  // At 75 rpm, 7.85 rad/s, braking with 2.5 Nm brings 20 W and 100 W are lost.
  expect(surface.efficiency_frac[at(1, 39)]).toBe(0);
  expect(surface.efficiency_frac[at(40, 40)]).toBe(0);
  expect(surface.efficiency_frac[at(0, 60)]).toBe(0);
});

it("bounds no torque by power at rest, where nothing turns, however much the motor draws idling", () => {
  const idling = { kind: "fourTerm" as const, copper_coeff: 0, iron_coeff: 0, windage_coeff: 0, constant_W: 25_000 };
  const { limits } = motorSurface({ ...job, motor: { ...job.motor, loss: idling } }, 0);
  const power = limits.find(({ name }) => name === "controller's power or current");
  expect(power?.points[0].speed_rpm).toBe(surface.speed_rpm[1]);
  // Idling alone is more than the 20 kW: no torque is left.
  expect(power?.points[0].torque_Nm).toBeCloseTo(0, 9);
});

it("bounds by the controller's current at the pack's voltage as by its power", () => {
  const by = (controller: object) =>
    motorSurface({ ...job, controller: { ...job.controller, ...controller } }, 0).limits;
  // 50 A at 400 V.
  expect(by({ power_kW: undefined, current_A: 50 })[1].points).toEqual(
    surface.limits[1].points.map(({ speed_rpm, torque_Nm }) => ({
      speed_rpm,
      torque_Nm: expect.closeTo(torque_Nm, 6),
    })),
  );
  const names = by({ power_kW: undefined, torqueCap_Nm: 120 }).map(({ name }) => name);
  expect(names).toEqual(["driveline in only"]);
});

it("marks what lies inside the envelope, the roll-back at top speed counted", () => {
  expect(surface.isInside[at(10, 80)]).toBe(1);
  expect(surface.isInside[at(70, 80)]).toBe(0);
  expect(surface.isInside[at(80, 41)]).toBe(0);
});

it("draws the limits that lie under the envelope's peak", () => {
  expect(surface.limits.map(({ name }) => name)).toEqual([
    "controller's torque",
    "controller's power or current",
    "driveline in only",
  ]);
  for (const { points } of surface.limits.slice(0, 1)) for (const { torque_Nm } of points) expect(torque_Nm).toBe(80);
  const power = surface.limits[1].points.map(({ speed_rpm, torque_Nm }) => {
    const speed_radps = (speed_rpm * Math.PI) / 30;
    return torque_Nm * speed_radps + 0.3 * torque_Nm ** 2 + 0.2 * speed_radps + 100;
  });
  expect(power.length).toBeGreaterThan(20);
  for (const drawn_W of power) expect(drawn_W).toBeCloseTo(20_000, 3);
});

it("has what the motor gives for as long as asked: its maker's power, and the torque whose loss a hot day takes away", () => {
  const motor = {
    ...job.motor,
    rating: { continuous_kW: 6 },
    heat: { capacity_kJpK: 20, cooling_WpK: 4, derateFrom_degC: 135, derateTo_degC: 155 },
  };
  const { limits, speed_rpm } = motorSurface({ ...job, motor }, 0);
  const line = (name: string) => limits.find((limit) => limit.name === name)?.points ?? [];
  expect(line("continuous by its maker").map((point) => point.speed_rpm)).toEqual(Array.from(speed_rpm));
  // Slower than 6 kW would be 100 Nm the peak bounds it, at rest too.
  expect(line("continuous by its maker")[0].torque_Nm).toBe(100);
  const i = 40; // 3000 rpm
  const speed_radps = (speed_rpm[i] * Math.PI) / 30;
  expect(line("continuous by its maker")[i].torque_Nm).toBeCloseTo(6000 / speed_radps, 6);
  // 4 W/K over 100 K is 400 W: 100 and 0.2 ω of it are there without torque, 0.3 T² is the rest.
  expect(line("continuous on a hot day")[i].torque_Nm).toBeCloseTo(Math.sqrt((400 - 100 - 0.2 * speed_radps) / 0.3), 6);
  const { limits: hotter } = motorSurface({ ...job, motor, requirement: { hotDay_degC: 50 } }, 0);
  const less = hotter.find(({ name }) => name === "continuous on a hot day")?.points ?? [];
  expect(less[i].torque_Nm).toBeCloseTo(Math.sqrt((340 - 100 - 0.2 * speed_radps) / 0.3), 6);
});
