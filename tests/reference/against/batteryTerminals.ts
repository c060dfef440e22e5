import { terminalCurrent_A } from "../../../sim/battery/terminalCurrent.ts";
import { bareJob, type Changes, driven } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";
import { bookMotor, electricTwoSeater } from "./standingStarts.ts";

/** 156 lead-acid cells full, 2.15 V each; 0.1072 ohm with the leads, twice that when charging. */
const bookPack: Changes = {
  module: {
    seriesCells: 156,
    openCircuit: { soc_frac: [0, 1], cell_V: [2.15, 2.15] },
    resistance: { soc_frac: [0, 1], module_mohm: [107.2, 107.2] },
    charging_ratio: 2,
  },
  accessories: { standing_W: 250, dcdcEfficiency_frac: 1 },
};

/** Half of the braking force goes to the motor. */
const HALF_BRAKING_N = (1617 - 85.5 - 72.442) / 2;

/** One step of one second with a mean speed of 20 m/s, as the book reckons: all forces at that speed. */
function oneStep(accel_mps2: number) {
  const { channels } = driven(
    bareJob({
      ...electricTwoSeater,
      ...bookPack,
      vehicle: {
        ...electricTwoSeater.vehicle,
        inertia: { kind: "massFactor", mass_ratio: 1.05 },
      },
      motor: bookMotor,
      controller: {
        regen: { isOn: true, wheelForce_N: HALF_BRAKING_N, fadeNone_kmh: 0, fadeFull_kmh: 0 },
      },
    }),
    {
      id: "step",
      title: "one step",
      time_s: Float64Array.of(0, 1),
      speed_mps: Float64Array.of(20 - 0.5 * accel_mps2, 20 + 0.5 * accel_mps2),
    },
    0.5,
  );
  return {
    wheel_W: (channels.wheelForce_N[1] - channels.brakeForce_N[1]) * 20,
    motor_Nm: channels.motorTorque_Nm[1],
    loss_W: channels.motorLoss_W[1],
    battery_W: channels.battery_W[1],
    battery_A: channels.battery_A[1],
    battery_V: channels.battery_V[1],
  };
}

// The book multiplies braking power by an efficiency; here, as the design has it, loss is added to shaft power: the last row's power,
// current and voltage are reckoned so, all else is the same.
const table: readonly (readonly [number, readonly number[]])[] = [
  [0, [3158.8, 4.493, 2639.6, 6214.7, 18.64, 333.402]],
  [0.5, [19_328.8, 27.495, 2860.3, 23_456.4, 71.573, 327.727]],
  [-1, [-14_590.6, -18.731, 2738.8, -10_872.3, -31.77, 335.4 + 31.77 * 0.2144]],
];
const columns = [
  ["wheel_W", "power at the tyres through the driveline", "W", 0.05],
  ["motor_Nm", "motor torque", "Nm", 5e-4],
  ["loss_W", "loss of motor and controller", "W", 0.05],
  ["battery_W", "power at the pack's terminals", "W", 0.05],
  ["battery_A", "current of the pack", "A", 5e-3],
  ["battery_V", "voltage under load", "V", 1.2e-3],
] as const;

export const batteryTerminals: readonly Comparison[] = [
  ...columns.map(
    ([key, quantity, unit, tolerance], column): Comparison => ({
      quantity: `one step of the textbook's electric two-seater: ${quantity}`,
      source: "[LarminieLowry2012, ch. 8], inputs from copies of the listing; worked out by hand",
      as: "difference",
      unit,
      tolerance: tolerance * (1 + 1e-6),
      why: "half of the last digit worked out (voltage: that of the current times resistance)",
      samples: 3,
      pairs: () =>
        table.map(([accel_mps2, expected]) => ({
          at: `20 m/s, ${accel_mps2} m/s²`,
          expected: expected[column],
          found: oneStep(accel_mps2)[key],
        })),
    }),
  ),
  {
    quantity: "current for a power",
    source: "[LarminieLowry2012, eq. 2.20], I = (E - √(E² - 4 R P)) / 2R",
    as: "difference",
    unit: "A",
    tolerance: 5e-4,
    why: "half of the last digit worked out",
    samples: 1,
    pairs: () => [{ at: "350 V, 0.1 ohm, 30 kW", expected: 87.923, found: terminalCurrent_A(30_000, 350, 0.1) }],
  },
  {
    quantity: "current for a power, against the school form",
    source: "[LarminieLowry2012, eqs. 2.20 and 2.22], their two forms for discharge and charge",
    as: "ratio",
    unit: "A",
    tolerance: 1e-9,
    why: "rounding of the school form, which subtracts two numbers nearly equal",
    samples: 40,
    pairs: () =>
      Array.from({ length: 20 }, (_, k) => 1500 * (k + 1)).flatMap((power_W) => {
        const E = 120;
        const R = 0.08;
        return [
          {
            at: `${power_W} W out`,
            expected: (E - Math.sqrt(E * E - 4 * R * power_W)) / (2 * R),
            found: terminalCurrent_A(power_W, E, R),
          },
          {
            at: `${power_W} W in`,
            expected: -(-E + Math.sqrt(E * E + 4 * R * power_W)) / (2 * R),
            found: terminalCurrent_A(-power_W, E, R),
          },
        ];
      }),
  },
];
