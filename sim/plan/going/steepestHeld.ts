import { greatestWhere } from "../../math/halving.ts";
import type { Model } from "../../step/model.ts";
import type { Gear } from "../../vehicle/gear.ts";
import { steadyOnSlope, WALL } from "./steadyOnSlope.ts";

/**
 * Sine of the steepest slope on which a car keeps a speed in one gear with at most `power_W` at the motor shaft, such as its maker's
 * continuous rating, and within every limit of the step; 0 where it does not even on the level. At that power
 *
 *   m g sin θ = (P / ω - drag torque) G η / r - rolling - air        [GTR15, Annex 7, para 5], at a steady speed
 */
export function steepestHeld(model: Model, gear: Gear, speed_mps: number, power_W: number): number {
  const turned_radps = speed_mps * gear.motor_radpm;
  return greatestWhere(0, WALL, (sinSlope) => {
    const { motor_Nm, over_Nm } = steadyOnSlope(model, gear, sinSlope, [speed_mps, speed_mps], 0);
    return over_Nm <= 0 && motor_Nm * turned_radps <= power_W;
  });
}
