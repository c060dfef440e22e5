import type { Job } from "../../shared/job/job.ts";
import { MM_PER_M, MPS_PER_KMH, PA_PER_KPA, ZERO_CELSIUS_K } from "../../shared/units.ts";
import { REFERENCE_AIR_K, REFERENCE_AIR_kgpm3, TYRE_TEMPERATURE_coeff } from "../constants.ts";
import { airDensity_kgpm3, standardPressure_Pa } from "./airDensity.ts";
import type { RoadLoad } from "./roadLoad.ts";

const PER_100_KMH_mps = 100 * MPS_PER_KMH;

/** What a day changes beside temperature and pressure: times the drag, times the rolling resistance. */
export interface RoadRatios {
  readonly drag_ratio: number;
  readonly rolling_ratio: number;
}

/** A dry day. */
export const AS_EVER: RoadRatios = { drag_ratio: 1, rolling_ratio: 1 };

/**
 * Road load of a job's car at a mass, on its day: temperature, pressure, wind.
 *
 *   rolling at T = rolling at 20 degC / (1 + 0.0086 (T - 20));  drag in proportion to air density      [GTR15, Annex 4]
 *
 * Coast-down coefficients hold at reference conditions and the mass they were found at: f0 goes with mass, f1 and f2 do not.
 * Wheel-side drag, that of front shafts that turn among it, is in them and not added; trailer and roof come on top.
 */
export function prepareRoadLoad(
  job: Pick<Job, "vehicle" | "environment">,
  testMass_kg: number,
  shaftDrag_Nm: number,
  { drag_ratio, rolling_ratio }: RoadRatios = AS_EVER,
): RoadLoad {
  const { vehicle, environment } = job;
  const { tyres, roadLoad, roof, trailer } = vehicle;
  const air_kgpm3 = airOf_kgpm3(job.environment) * drag_ratio;
  const softer_ratio =
    (tyres.followsTemperature
      ? 1 + TYRE_TEMPERATURE_coeff * (environment.temperature_degC + ZERO_CELSIUS_K - REFERENCE_AIR_K)
      : 1) / rolling_ratio;
  const gravity_mps2 = environment.gravity_mps2;
  const mass_kg = testMass_kg + (trailer?.mass_kg ?? 0);
  const towed_N = trailer ? (trailer.mass_kg * gravity_mps2 * trailer.rolling_coeff) / softer_ratio : 0;
  const extraDragArea_m2 = (roof?.dragArea_m2 ?? 0) + (trailer?.dragArea_m2 ?? 0);
  const weight_N = mass_kg * gravity_mps2;
  const headWind_mps = environment.headWind_kmh * MPS_PER_KMH;
  if (roadLoad.kind === "coastDown") {
    return {
      mass_kg,
      weight_N,
      rollingWeight_N: towed_N,
      rollingWeight_Npmps2: 0,
      rollingFixed_N: (roadLoad.f0_N * (testMass_kg / roadLoad.mass_kg)) / softer_ratio,
      rolling_Npmps: roadLoad.f1_Npkmh / MPS_PER_KMH / softer_ratio,
      drag_Npmps2:
        (roadLoad.f2_Npkmh2 / (MPS_PER_KMH * MPS_PER_KMH)) * (air_kgpm3 / REFERENCE_AIR_kgpm3) +
        0.5 * air_kgpm3 * extraDragArea_m2,
      headWind_mps,
      wheelDrag_N: 0,
    };
  }
  const dragArea_m2 =
    roadLoad.kind === "dragArea" ? roadLoad.dragArea_m2 : roadLoad.drag_coeff * roadLoad.frontalArea_m2;
  const carWeight_N = testMass_kg * gravity_mps2;
  return {
    mass_kg,
    weight_N,
    rollingWeight_N: (carWeight_N * tyres.rolling_coeff) / softer_ratio + towed_N,
    rollingWeight_Npmps2: (carWeight_N * tyres.rollingRise_coeff) / (PER_100_KMH_mps * PER_100_KMH_mps) / softer_ratio,
    rollingFixed_N: 0,
    rolling_Npmps: 0,
    drag_Npmps2: 0.5 * air_kgpm3 * (dragArea_m2 + extraDragArea_m2),
    headWind_mps,
    wheelDrag_N: (roadLoad.wheelDrag_Nm + shaftDrag_Nm) / (tyres.loadedRadius_mm / MM_PER_M),
  };
}

function airOf_kgpm3({ temperature_degC, pressure_kPa, altitude_m }: Job["environment"]): number {
  const pressure_Pa = altitude_m === undefined ? (pressure_kPa ?? 100) * PA_PER_KPA : standardPressure_Pa(altitude_m);
  return airDensity_kgpm3(temperature_degC + ZERO_CELSIUS_K, pressure_Pa);
}
