import type { Motor } from "../job/schema/motor.ts";
import { genericLossOfPeak, genericLossOrigins } from "./genericLoss.ts";
import { invented, published } from "./origin.ts";
import type { Part } from "./part.ts";

const law = "[LarminieLowry2012, eq. 8.25 and ch. 8]";

const loss = {
  induction18: genericLossOfPeak("induction", { torque_Nm: 75, power_kW: 18 }),
  induction38: genericLossOfPeak("induction", { torque_Nm: 120, power_kW: 38 }),
};

/** Low-voltage induction motors for light cars, both invented, and the textbook's machine of 100 kW. */
export const inductionMotors: readonly Part<Motor>[] = [
  {
    id: "induction-18-kw",
    title: "Low-voltage induction, 18 kW",
    data: {
      name: "Low-voltage induction, 18 kW",
      kind: "induction",
      origin: "invented, plausible for an air-cooled motor on about 76 V; losses from efficiency classes",
      mass_kg: 32,
      envelope: { kind: "peak", torque_Nm: 75, power_kW: 18 },
      reference_V: 76,
      maxSpeed_rpm: 6500,
      rollBack_rpm: 300,
      rotorInertia_kgm2: 0.012,
      canRegenerate: true,
      loss: loss.induction18,
      heat: { capacity_kJpK: 14, cooling_WpK: 10, derateFrom_degC: 125, derateTo_degC: 150 },
    },
    origins: {
      mass_kg: invented(26, 38),
      "envelope.torque_Nm": invented(60, 90),
      "envelope.power_kW": invented(14, 22),
      reference_V: invented(70, 82),
      maxSpeed_rpm: invented(5500, 7500),
      rollBack_rpm: invented(100, 500),
      rotorInertia_kgm2: invented(0.008, 0.02),
      ...genericLossOrigins("induction", loss.induction18),
      "heat.capacity_kJpK": invented(11, 18, "about 0.45 kJ/K for each kilogram"),
      "heat.cooling_WpK": invented(6, 16),
      "heat.derateFrom_degC": invented(110, 140),
      "heat.derateTo_degC": invented(140, 165),
    },
  },
  {
    id: "induction-38-kw",
    title: "Low-voltage induction, 38 kW",
    data: {
      name: "Low-voltage induction, 38 kW",
      kind: "induction",
      origin: "invented, plausible for an air-cooled motor on about 108 V; losses from efficiency classes",
      mass_kg: 52,
      envelope: { kind: "peak", torque_Nm: 120, power_kW: 38 },
      reference_V: 108,
      maxSpeed_rpm: 8000,
      rollBack_rpm: 300,
      rotorInertia_kgm2: 0.025,
      canRegenerate: true,
      loss: loss.induction38,
      heat: { capacity_kJpK: 23, cooling_WpK: 19, derateFrom_degC: 130, derateTo_degC: 155 },
    },
    origins: {
      mass_kg: invented(44, 60),
      "envelope.torque_Nm": invented(100, 140),
      "envelope.power_kW": invented(30, 45),
      reference_V: invented(100, 116),
      maxSpeed_rpm: invented(7000, 9000),
      rollBack_rpm: invented(100, 500),
      rotorInertia_kgm2: invented(0.015, 0.04),
      ...genericLossOrigins("induction", loss.induction38),
      "heat.capacity_kJpK": invented(19, 28, "about 0.45 kJ/K for each kilogram"),
      "heat.cooling_WpK": invented(12, 28),
      "heat.derateFrom_degC": invented(110, 140),
      "heat.derateTo_degC": invented(145, 170),
    },
  },
  {
    id: "induction-100-kw",
    title: "Induction, 100 kW, the textbook's",
    data: {
      name: "Induction, 100 kW, the textbook's",
      kind: "induction",
      origin: "published law for the losses, 140 Nm and 102 kW from memory, the rest invented",
      mass_kg: 66,
      envelope: { kind: "peak", torque_Nm: 140, power_kW: 102 },
      reference_V: 312,
      maxSpeed_rpm: 12_000,
      rollBack_rpm: 400,
      rotorInertia_kgm2: 0.035,
      canRegenerate: true,
      loss: { kind: "fourTerm", copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 },
      heat: { capacity_kJpK: 30, cooling_WpK: 33, derateFrom_degC: 130, derateTo_degC: 155 },
    },
    origins: {
      mass_kg: invented(55, 80),
      "envelope.torque_Nm": published(law, 135, 145, "from memory, unconfirmed"),
      "envelope.power_kW": published(law, 100, 104, "from memory, unconfirmed"),
      reference_V: published(law, 300, 336, "156 lead-acid cells nearly empty; from memory, unconfirmed"),
      maxSpeed_rpm: invented(10_000, 14_000),
      rollBack_rpm: invented(100, 600),
      rotorInertia_kgm2: invented(0.02, 0.06),
      "loss.copper_coeff": published(law, 0.25, 0.35),
      "loss.iron_coeff": published(law, 0.008, 0.012),
      "loss.windage_coeff": published(law, 4e-6, 6e-6),
      "loss.constant_W": published(law, 500, 700),
      "heat.capacity_kJpK": invented(24, 38, "about 0.45 kJ/K for each kilogram"),
      "heat.cooling_WpK": invented(22, 50, "liquid cooling"),
      "heat.derateFrom_degC": invented(110, 140),
      "heat.derateTo_degC": invented(145, 170),
    },
  },
];
