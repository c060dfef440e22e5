import type { Motor } from "../job/schema/motor.ts";
import { invented, inventedCurve, practice, published } from "./origin.ts";
import type { Part } from "./part.ts";

const law = "[LarminieLowry2012, ch. 8]";

/** Motors with a commutator: the series-wound kind of fork-lift descent, and the textbook's small disc. */
export const brushedMotors: readonly Part<Motor>[] = [
  {
    id: "series-brushed-25-kw",
    title: "Series-wound brushed, 25 kW",
    data: {
      name: "Series-wound brushed, 25 kW",
      kind: "seriesBrushed",
      origin: "invented, plausible for a motor of fork-lift size on about 120 V; no regen",
      mass_kg: 62,
      envelope: {
        kind: "points",
        speed_rpm: [0, 1500, 2000, 2500, 3000, 4000, 5000],
        torque_Nm: [140, 140, 120, 90, 66, 40, 27],
      },
      reference_V: 120,
      maxSpeed_rpm: 5000,
      rollBack_rpm: 400,
      rotorInertia_kgm2: 0.06,
      canRegenerate: false,
      loss: { kind: "fourTerm", copper_coeff: 0.8, iron_coeff: 1.2, windage_coeff: 8e-6, constant_W: 200 },
      heat: { capacity_kJpK: 28, cooling_WpK: 32, derateFrom_degC: 120, derateTo_degC: 145 },
    },
    origins: {
      mass_kg: invented(52, 75),
      envelope: inventedCurve(0.2, "torque falls fast with speed, as the field weakens with the current"),
      reference_V: invented(110, 130),
      maxSpeed_rpm: practice(4000, 6000, "brushed motors burst their commutators above"),
      rollBack_rpm: invented(200, 600),
      rotorInertia_kgm2: invented(0.04, 0.09),
      "loss.copper_coeff": invented(0.6, 1.1),
      "loss.iron_coeff": invented(0.8, 1.8),
      "loss.windage_coeff": invented(5e-6, 1.2e-5),
      "loss.constant_W": invented(120, 300, "brushes and the fan"),
      "heat.capacity_kJpK": invented(22, 36, "about 0.45 kJ/K for each kilogram"),
      "heat.cooling_WpK": invented(20, 45, "air through the motor"),
      "heat.derateFrom_degC": invented(105, 135),
      "heat.derateTo_degC": invented(135, 160),
    },
  },
  {
    id: "brushed-disc-5-kw",
    title: "Brushed disc with magnets, 5 kW, the textbook's",
    data: {
      name: "Brushed disc with magnets, 5 kW, the textbook's",
      kind: "magnetBrushed",
      origin: "published law for the losses, the rest invented",
      mass_kg: 11,
      envelope: { kind: "peak", torque_Nm: 20, power_kW: 5 },
      reference_V: 48,
      maxSpeed_rpm: 4000,
      rollBack_rpm: 200,
      rotorInertia_kgm2: 0.02,
      canRegenerate: true,
      loss: { kind: "fourTerm", copper_coeff: 1.5, iron_coeff: 0.1, windage_coeff: 1e-5, constant_W: 20 },
      heat: { capacity_kJpK: 5, cooling_WpK: 3.5, derateFrom_degC: 110, derateTo_degC: 130 },
    },
    origins: {
      mass_kg: invented(9, 14),
      "envelope.torque_Nm": invented(16, 24),
      "envelope.power_kW": published(law, 2, 5, "given as of the 2 to 5 kW class"),
      reference_V: invented(36, 60),
      maxSpeed_rpm: invented(3500, 5000),
      rollBack_rpm: invented(100, 400),
      rotorInertia_kgm2: invented(0.01, 0.03),
      "loss.copper_coeff": published(law, 1.2, 1.8),
      "loss.iron_coeff": published(law, 0.08, 0.12),
      "loss.windage_coeff": published(law, 8e-6, 1.2e-5),
      "loss.constant_W": published(law, 16, 24),
      "heat.capacity_kJpK": invented(4, 7, "about 0.45 kJ/K for each kilogram"),
      "heat.cooling_WpK": invented(2, 6),
      "heat.derateFrom_degC": invented(95, 120),
      "heat.derateTo_degC": invented(120, 145),
    },
  },
];
