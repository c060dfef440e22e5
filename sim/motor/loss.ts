import { bilinear, type RectangularTable } from "../math/rectangularTable.ts";

/** Loss of motor and controller together. `form` picks which of the other fields hold. */
export type Loss =
  | { readonly form: "fourTerm"; readonly law: FourTermLaw }
  | { readonly form: "table"; readonly table: RectangularTable; readonly isMirrored: boolean }
  | { readonly form: "flat"; readonly efficiency_frac: number };

/** kc T² + ki w + kw w³ + c0, T in Nm, w in rad/s, watts out. */
export interface FourTermLaw {
  readonly copper_coeff: number;
  readonly iron_coeff: number;
  readonly windage_coeff: number;
  readonly constant_W: number;
}

/**
 * Loss by the four-term law, in watts; the same for either sign of torque.
 *
 *   P_loss = kc T² + ki w + kw w³ + C      [LarminieLowry2012, eq. 8.25]
 */
export function fourTermLoss_W(law: FourTermLaw, torque_Nm: number, speed_radps: number): number {
  return (
    law.copper_coeff * torque_Nm * torque_Nm +
    speed_radps * (law.iron_coeff + law.windage_coeff * speed_radps * speed_radps) +
    law.constant_W
  );
}

/**
 * Loss of motor and controller at a torque and a speed above zero, in watts, not negative. Added to shaft power either way:
 * what reaches the shaft when driving, what reaches the pack when braking.
 *
 * A table is bilinear inside and continues its edge cells beyond, where the envelope seldom lets the motor go.
 * One flat efficiency divides when driving and multiplies when braking.
 */
export function motorLoss_W(loss: Loss, torque_Nm: number, speed_radps: number): number {
  switch (loss.form) {
    case "fourTerm":
      return fourTermLoss_W(loss.law, torque_Nm, speed_radps);
    case "table": {
      const value_W = bilinear(loss.table, speed_radps, loss.isMirrored ? Math.abs(torque_Nm) : torque_Nm);
      return Math.max(value_W, 0);
    }
    case "flat":
      return torque_Nm > 0
        ? torque_Nm * speed_radps * (1 / loss.efficiency_frac - 1)
        : -torque_Nm * speed_radps * (1 - loss.efficiency_frac);
  }
}
