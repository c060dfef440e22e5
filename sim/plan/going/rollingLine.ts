import type { Job } from "../../../shared/job/job.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { TYRE_TEMPERATURE_coeff } from "../../constants.ts";
import type { SteadyRow } from "../driveReport.ts";

/**
 * Rolling resistance at a speed with the numbers put in, as `rolling_N` and `prepareRoadLoad` have it: the weight, then what the
 * coefficient, its rise with speed and the air's temperature make of it.
 */
export function rollingLine(job: Job, testMass_kg: number, row: SteadyRow, units: UnitHabit): string[] {
  const { vehicle, environment } = job;
  const { tyres, roadLoad, trailer } = vehicle;
  const force = (value_N: number) => writeQuantity("force", value_N, units);
  const speed = (value_kmh: number) => writeQuantity("speed", value_kmh, units);
  const degrees = (value_degC: number) => writeQuantity("temperature", value_degC, units);
  const weight_N = testMass_kg * environment.gravity_mps2;
  const towed = trailer
    ? ` + ${force(trailer.mass_kg * environment.gravity_mps2)} of trailer × ${formatNumber(trailer.rolling_coeff)}`
    : "";
  // A pound's weight is a pound of force; newtons come of kilograms.
  const gravity =
    units === "american" ? "" : `${units === "british" ? " × 0.454" : ""} × ${formatNumber(environment.gravity_mps2)}`;
  // A Fahrenheit degree is 1/1.8 of a kelvin.
  const perDegree = units === "american" ? ` / 1.8` : "";
  const air = tyres.followsTemperature
    ? ` / (1 + ${formatNumber(TYRE_TEMPERATURE_coeff)} × (${degrees(environment.temperature_degC)} - ${degrees(20)})${perDegree})`
    : "";
  const result = force(row.rolling_N);
  if (roadLoad.kind === "coastDown") {
    const { f0_N, f1_Npkmh, mass_kg } = roadLoad;
    const share = formatNumber(testMass_kg / mass_kg);
    const linear = writeQuantity("dragLinear", f1_Npkmh, units);
    return [
      `(${force(f0_N)} × ${share} of the mass rolled + ${linear} × ${speed(row.speed_kmh)}${towed})${air} = ${result}`,
    ];
  }
  const { rolling_coeff, rollingRise_coeff } = tyres;
  const rise =
    rollingRise_coeff > 0
      ? `${formatNumber(rolling_coeff)} + ${formatNumber(rollingRise_coeff)} × (${speed(row.speed_kmh)} / ${speed(100)})²`
      : formatNumber(rolling_coeff);
  return [
    `weight: ${writeQuantity("mass", testMass_kg, units, 4)}${gravity} = ${force(weight_N)}`,
    `(${force(weight_N)} × (${rise})${towed})${air} = ${result}`,
  ];
}
