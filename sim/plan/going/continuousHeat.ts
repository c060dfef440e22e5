import type { Motor } from "../../../shared/job/schema/motor.ts";

const COOLANT_degC = 40;
const CLASS_F_degC = { derateFrom_degC: 130, derateTo_degC: 155 }; // windings of class F: common practice, no source

/**
 * A heat limit under which a motor holds a loss, in watts, continuously.
 *
 *   cooling = loss / (T_derate - 40 °C)
 *
 * A continuous rating (duty S1) is one in surroundings of at most 40 °C [IEC60034-1, duty types and site conditions]. Temperatures
 * and capacity of `known` stay where there are some.
 */
export function continuousHeat(loss_W: number, mass_kg: number, known: Motor["heat"]): NonNullable<Motor["heat"]> {
  const { derateFrom_degC, derateTo_degC } = known ?? CLASS_F_degC;
  // Surroundings as warm as the derating itself would ask for endless cooling.
  const span_K = Math.max(derateFrom_degC - COOLANT_degC, 10);
  return {
    // 0.45 kJ/K for each kilogram of iron and copper: common practice, no source.
    capacity_kJpK: known?.capacity_kJpK ?? Number((0.45 * mass_kg).toPrecision(3)),
    cooling_WpK: Number((loss_W / span_K).toPrecision(3)),
    derateFrom_degC,
    derateTo_degC,
  };
}
