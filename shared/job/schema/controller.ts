import * as z from "zod";
import { across } from "./across.ts";
import { above0, between, line } from "./number.ts";

/** How much the motor brakes. Every limit given holds; fade multiplies each of them. */
const Regen = z
  .strictObject({
    isOn: z.boolean(),
    /** At the tyres. */
    wheelForce_N: between(0, 50_000).optional(),
    /** At the motor shaft. */
    torque_Nm: between(0, 10_000).optional(),
    /** At the controller's DC side. */
    power_kW: between(0, 2000).optional(),
    current_A: between(0, 5000).optional(),
    /** None at and below this road speed. */
    fadeNone_kmh: between(0, 100).default(5),
    /** In full from this road speed. */
    fadeFull_kmh: between(0, 150).default(12),
  })
  .check(
    across(["fadeNone_kmh", "fadeFull_kmh"], ({ fadeNone_kmh, fadeFull_kmh }, fault) => {
      if (fadeFull_kmh < fadeNone_kmh)
        fault(["fadeFull_kmh"], `found ${fadeFull_kmh} km/h, fadeNone_kmh (${fadeNone_kmh} km/h) or more wanted`);
    }),
  );

export const Controller = z
  .strictObject({
    name: line,
    min_V: between(0, 1500),
    max_V: above0(1500),
    /** Torque is full above this voltage under load and none at `min_V`. */
    rollBackBelow_V: between(0, 1500).optional(),
    /** Regen is full below this voltage under load and none at `max_V`. */
    rollBackAbove_V: between(0, 1500).optional(),
    torqueCap_Nm: above0(10_000).optional(),
    power_kW: above0(2000).optional(),
    current_A: above0(5000).optional(),
    /** From no torque to full in a standing start. */
    ramp_s: between(0, 10).default(0),
    regen: Regen,
  })
  .check(
    across(["min_V", "max_V"], ({ min_V, max_V }, fault) => {
      if (max_V <= min_V) fault(["max_V"], `found ${max_V} V, above min_V (${min_V} V) wanted`);
    }),
    across(["min_V", "rollBackBelow_V"], ({ min_V, rollBackBelow_V }, fault) => {
      if (rollBackBelow_V !== undefined && rollBackBelow_V <= min_V)
        fault(["rollBackBelow_V"], `found ${rollBackBelow_V} V, above min_V (${min_V} V) wanted`);
    }),
    across(["max_V", "rollBackAbove_V"], ({ max_V, rollBackAbove_V }, fault) => {
      if (rollBackAbove_V !== undefined && rollBackAbove_V >= max_V)
        fault(["rollBackAbove_V"], `found ${rollBackAbove_V} V, below max_V (${max_V} V) wanted`);
    }),
  );
export type Controller = z.infer<typeof Controller>;
