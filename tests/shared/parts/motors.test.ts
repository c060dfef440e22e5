import { describe, expect, it } from "vitest";
import { motors } from "../../../shared/parts/motors.ts";

const RADPS_PER_RPM = Math.PI / 30;
type Motor = (typeof motors)[number]["data"];

/** kc T^2 + ki w + kw w^3 + c0, written out again here. */
function loss_W(motor: Motor, torque_Nm: number, speed_radps: number): number {
  if (motor.loss.kind !== "fourTerm") throw new Error(`${motor.name} has no four-term law`);
  const { copper_coeff, iron_coeff, windage_coeff, constant_W } = motor.loss;
  return copper_coeff * torque_Nm ** 2 + iron_coeff * speed_radps + windage_coeff * speed_radps ** 3 + constant_W;
}

function efficiency_frac(motor: Motor, torque_Nm: number, speed_radps: number): number {
  const shaft_W = torque_Nm * speed_radps;
  return shaft_W / (shaft_W + loss_W(motor, torque_Nm, speed_radps));
}

function peakTorque_Nm({ envelope }: Motor, speed_radps: number): number {
  if (envelope.kind === "peak") return Math.min(envelope.torque_Nm, (1000 * envelope.power_kW) / speed_radps);
  const speed_rpm = speed_radps / RADPS_PER_RPM;
  const i = envelope.speed_rpm.findIndex((node_rpm) => node_rpm >= speed_rpm);
  const share = (speed_rpm - envelope.speed_rpm[i - 1]) / (envelope.speed_rpm[i] - envelope.speed_rpm[i - 1]);
  return envelope.torque_Nm[i - 1] + share * (envelope.torque_Nm[i] - envelope.torque_Nm[i - 1]);
}

/** Mean efficiency in the middle of the map: 0.3 to 0.6 of the top speed, a sixteenth to a quarter of the peak torque. */
function middle_frac(motor: Motor): number {
  const { envelope } = motor;
  const peak_Nm = envelope.kind === "peak" ? envelope.torque_Nm : Math.max(...envelope.torque_Nm);
  let sum = 0;
  for (let i = 0; i <= 20; i++) {
    for (let j = 0; j <= 20; j++) {
      const speed_radps = (0.3 + 0.015 * i) * motor.maxSpeed_rpm * RADPS_PER_RPM;
      sum += efficiency_frac(motor, (peak_Nm * (1 + 0.15 * j)) / 16, speed_radps) / 21 ** 2;
    }
  }
  return sum;
}

const isBrushed = ({ kind }: Motor) => kind === "seriesBrushed" || kind === "magnetBrushed";
const byId = (id: string) => {
  const part = motors.find((motor) => motor.id === id);
  if (!part) throw new Error(`no motor ${id}`);
  return part.data;
};

it("there are the four usual kinds", () => {
  const kinds = new Set(motors.map(({ data }) => data.kind));
  for (const kind of ["induction", "interiorMagnet", "surfaceMagnet", "seriesBrushed"] as const) {
    expect(kinds.has(kind)).toBe(true);
  }
});

describe.each(motors.map(({ id, data }) => [id, data] as const))("%s", (_, motor) => {
  it("is as good in the middle of its map as motors of its kind with their controllers are", () => {
    // Common practice, no source: 0.85 to 0.93 alternating current, 0.90 to 0.94 interior magnet from 50 kW, 0.78 to 0.88 brushed, to two digits.
    const [low, high] = isBrushed(motor)
      ? [0.78, 0.885]
      : motor.kind === "interiorMagnet"
        ? [0.9, 0.945]
        : [0.85, 0.935];
    expect(middle_frac(motor)).toBeGreaterThanOrEqual(low);
    expect(middle_frac(motor)).toBeLessThan(high);
  });

  it("reaches its base speed well below its top speed", () => {
    const { envelope, maxSpeed_rpm, rollBack_rpm } = motor;
    if (envelope.kind === "points") expect(envelope.speed_rpm.at(-1)).toBe(maxSpeed_rpm);
    else {
      const base_rpm = (1000 * envelope.power_kW) / envelope.torque_Nm / RADPS_PER_RPM;
      expect(base_rpm).toBeLessThan(maxSpeed_rpm - rollBack_rpm);
    }
  });

  it("turns no faster than its kind does", () => {
    // Common practice, no source: 4000 to 6000 rpm brushed, 6000 to 12 000 alternating current.
    const [low_rpm, high_rpm] = isBrushed(motor) ? [4000, 6000] : [6000, 12_000];
    expect(motor.maxSpeed_rpm).toBeGreaterThanOrEqual(low_rpm);
    expect(motor.maxSpeed_rpm).toBeLessThanOrEqual(high_rpm);
  });

  it("holds for ever a half to a third of its peak torque", () => {
    // Common practice, no source: the peak is 2 to 3 times what holds for ever. For ever means that the cooling carries
    // off the loss at 20 degC air without derating, at base speed, for the part of the loss that goes with torque.
    if (!motor.heat) throw new Error(`${motor.name} has no heat`);
    const base_radps =
      motor.envelope.kind === "peak"
        ? (1000 * motor.envelope.power_kW) / motor.envelope.torque_Nm
        : 1500 * RADPS_PER_RPM;
    const carried_W = motor.heat.cooling_WpK * (motor.heat.derateFrom_degC - 20);
    const peak_Nm = peakTorque_Nm(motor, base_radps);
    const fixed_W = loss_W(motor, 0, base_radps);
    const copper_W = loss_W(motor, peak_Nm, base_radps) - fixed_W;
    const continuous_Nm = peak_Nm * Math.sqrt(Math.max(0, carried_W - fixed_W) / copper_W);
    expect(peak_Nm / continuous_Nm).toBeGreaterThanOrEqual(2);
    expect(peak_Nm / continuous_Nm).toBeLessThanOrEqual(3);
  });
});

it("invented ones give 0.40 to 0.70 when crawling", () => {
  // Common practice, no source. Crawling: a sixteenth of the peak torque at 40 rad/s, about walking pace in second gear.
  const invented = motors.filter(({ data }) => data.origin.startsWith("invented"));
  expect(invented).toHaveLength(6);
  for (const { id, data } of invented) {
    const crawl_frac = efficiency_frac(data, peakTorque_Nm(data, 40) / 16, 40);
    expect(crawl_frac, id).toBeGreaterThan(0.4);
    expect(crawl_frac, id).toBeLessThan(0.7);
  }
});

describe("the textbook's laws are the textbook's", () => {
  // Loss in watts worked out from the printed law and constants [LarminieLowry2012, eq. 8.25]. Exact arithmetic but for
  // the printed 0.1 W.
  it.each([
    ["induction-100-kw", 20, 200, 762],
    ["induction-100-kw", 40, 200, 1122],
    ["induction-100-kw", 100, 400, 3924],
    ["induction-100-kw", 140, 733, 8456.5],
    ["brushed-disc-5-kw", 5, 150, 106.25],
    ["brushed-disc-5-kw", 10, 200, 270],
    ["brushed-disc-5-kw", 20, 250, 801.25],
  ])("%s loses at %f Nm, %f rad/s %f W", (id, torque_Nm, speed_radps, expected_W) => {
    expect(Math.abs(loss_W(byId(id), torque_Nm, speed_radps) - expected_W)).toBeLessThan(0.05);
  });

  it("the induction machine is best at 55.5 Nm when turning 400 rad/s, at 0.92315", () => {
    const motor = byId("induction-100-kw");
    const at = (torque_Nm: number) => efficiency_frac(motor, torque_Nm, 400);
    expect(Math.abs(at(55.5) - 0.92315)).toBeLessThan(5e-6);
    expect(at(55.5)).toBeGreaterThan(at(54));
    expect(at(55.5)).toBeGreaterThan(at(57));
  });
});
