import type { Field } from "./fieldList.ts";
import { chosen, quantity, usual } from "./quantityFieldOf.ts";

const box = "driveline.transferBox";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the transfer box, the motor and its controller that a first answer does without. */
export const driveFields: Readonly<Record<string, Field>> = {
  [`${box}.range`]: {
    type: "choice",
    label: "Range that is driven in",
    choices: { high: "high", low: "low" },
  },
  [`${box}.isFrontEngaged`]: {
    type: "yesNo",
    label: "Front axle engaged",
    help: "Both axles drive. Never on a dry, hard road: the driveline winds up.",
  },
  [`${box}.hubs`]: {
    type: "choice",
    label: "Freewheeling hubs",
    choices: { free: "free", locked: "locked", none: "none fitted: its front shafts always turn" },
    help: "Free, the front shafts stand still; locked, the wheels turn them whether they drive or not.",
  },
  [`${box}.high_ratio`]: quantity("gearRatio", "High range"),
  [`${box}.low_ratio`]: quantity("gearRatio", "Low range"),
  [`${box}.highEfficiency_frac`]: quantity("fraction", "Efficiency in high range", { ...usual(0.96, "0.95 to 0.97") }),
  [`${box}.lowEfficiency_frac`]: quantity("fraction", "Efficiency in low range", { ...usual(0.94, "0.93 to 0.95") }),
  [`${box}.frontShaftDrag_Nm`]: quantity("torque", "Drag of the front shafts turning idle", {
    help: "At the front wheels, both together.",
    ...usual(12, "2 to 5 % of the energy by common practice; spin a wheel by hand to judge it"),
  }),
  [`${box}.frontEfficiency_frac`]: quantity("fraction", "Efficiency of the path to the front axle", {
    ...usual(0.96, "one more shaft and its joints"),
  }),

  "motor.kind": {
    type: "choice",
    label: "Kind of motor",
    choices: {
      induction: "induction",
      interiorMagnet: "magnets inside the rotor",
      surfaceMagnet: "magnets on the rotor",
      seriesBrushed: "series-wound, with brushes",
      magnetBrushed: "magnets and brushes",
    },
  },
  "motor.canRegenerate": {
    type: "yesNo",
    label: "The motor can brake into the pack",
    help: "A series-wound motor with brushes does not.",
  },
  "motor.rollBack_rpm": quantity("rotation", "Torque fades out over the last", {
    ...usual(200, "a few hundred rpm below its top speed"),
  }),
  "motor.envelope.speed_rpm.*": quantity("rotation", "Speed"),
  "motor.envelope.torque_Nm.*": quantity("torque", "Peak torque there"),
  "motor.loss.copper_coeff": quantity("coefficient", "Loss with torque squared, W/Nm²"),
  "motor.loss.iron_coeff": quantity("coefficient", "Loss with speed, W/(rad/s)"),
  "motor.loss.windage_coeff": quantity("coefficient", "Loss with speed cubed, W/(rad/s)³"),
  "motor.loss.constant_W": quantity("accessoryPower", "Loss whenever it turns"),
  "motor.heat.capacity_kJpK": quantity("heatCapacity", "Heat it takes up", {
    help: "About 0.45 kJ/K for each kilogram of motor.",
  }),
  "motor.heat.cooling_WpK": quantity("heatLoss", "Heat it gives off", {
    help: "For each kelvin above the air: decides its continuous power.",
  }),
  "motor.heat.derateFrom_degC": quantity("temperature", "Full torque up to", { ...usual(130, "windings of class F") }),
  "motor.heat.derateTo_degC": quantity("temperature", "No torque from", { ...usual(155, "windings of class F") }),

  "controller.ramp_s": quantity("duration", "Torque ramp", {
    ...chosen,
    help: "In a standing start. Gears break on shock, not on steady torque: 0.5 to 1 s spares an old box.",
    ...usual(0.7, "0.5 to 1 s"),
  }),
};
