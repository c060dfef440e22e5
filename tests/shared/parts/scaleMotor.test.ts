import { describe, expect, it } from "vitest";
import type { Motor, MotorLoss } from "../../../shared/job/schema/motor.ts";
import { motors } from "../../../shared/parts/motors.ts";
import { scaleMotor } from "../../../shared/parts/scaleMotor.ts";
import { motorLoss_W } from "../../../sim/motor/loss.ts";
import { prepareMotor } from "../../../sim/motor/prepareMotor.ts";

const part = motors.find(({ id }) => id === "interior-magnet-90-kw");
if (!part) throw new Error("no interior magnet of 90 kW");
const motor: Motor = part.data;

const losses: readonly MotorLoss[] = [
  motor.loss,
  { kind: "flat", efficiency_frac: 0.85 },
  { kind: "lossTable", speed_rpm: [0, 3000, 9000], torque_Nm: [0, 50, 240], loss_W: [[50, 400, 9000], [500, 900, 11_000], [1400, 2200, 14_000]] }, // biome-ignore format: a table
  { kind: "efficiencyMap", speed_rpm: [3000, 9000], torque_Nm: [50, 240], efficiency_frac: [[0.94, 0.87], [0.955, 0.94]] }, // biome-ignore format: a table
];

describe("a motor drawn in another size", () => {
  it.each(losses)("loses k^(3/4) times as much at k times the torque: $kind", (loss) => {
    const k = 1.6;
    const small = prepareMotor({ ...motor, loss }, true).loss;
    const large = prepareMotor(scaleMotor({ ...motor, loss }, k), true).loss;
    for (const [torque_Nm, speed_radps] of [
      [20, 320],
      [60, 500],
      [200, 350],
    ] as const) {
      const ratio = motorLoss_W(large, k * torque_Nm, speed_radps) / motorLoss_W(small, torque_Nm, speed_radps);
      // A flat efficiency and a map lose a share of what is passed: exact too. Edges of a map are fitted, hence 1e-6.
      expect(Math.abs(ratio / k ** 0.75 - 1)).toBeLessThan(1e-6);
    }
  });

  it("has k times the torque and power, and mass, inertia and cooling by the same rule of length", () => {
    const twice = scaleMotor(motor, 2);
    expect(twice.envelope).toEqual({ kind: "peak", torque_Nm: 480, power_kW: 180 });
    const length_ratio = 2 ** 0.25;
    expect(twice.mass_kg / motor.mass_kg).toBeCloseTo(length_ratio ** 3, 12);
    expect(twice.rotorInertia_kgm2 / motor.rotorInertia_kgm2).toBeCloseTo(length_ratio ** 5, 12);
    expect((twice.heat?.cooling_WpK ?? 0) / (motor.heat?.cooling_WpK ?? 1)).toBeCloseTo(length_ratio ** 3, 12);
  });

  it("and back again is the motor it was", () => {
    const back = scaleMotor(scaleMotor(motor, 2.5), 1 / 2.5);
    expect(back.mass_kg).toBeCloseTo(motor.mass_kg, 9);
    expect(back.loss.kind === "fourTerm" && back.loss.constant_W).toBeCloseTo(239, 9);
  });

  it("is refused beyond a third to three times, where the rule says nothing", () => {
    for (const wrong of [0, 0.3, 3.1, Number.NaN]) expect(() => scaleMotor(motor, wrong)).toThrow(RangeError);
  });

  it("the list's scaled ones keep three digits", () => {
    const smaller = motors.find(({ id }) => id === "interior-magnet-50-kw")?.data;
    expect(smaller?.envelope).toEqual({ kind: "peak", torque_Nm: 133, power_kW: 50 });
    expect(String(smaller?.mass_kg).replace(".", "").length).toBeLessThanOrEqual(3);
  });
});
