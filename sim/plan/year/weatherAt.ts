import type { Job } from "../../../shared/job/job.ts";
import type { Weather } from "../../../shared/job/schema/conditions.ts";
import type { DrivenIn } from "../../step/prepare.ts";

/** Where winter ends and the job's own weather begins where the two are of one temperature: a kelvin apart. */
const APART_K = 1;

/** How far a temperature is from the job's own weather (0) to its winter (1), not beyond either. */
export function winterShare(
  { environment, conditions }: Pick<Job, "environment" | "conditions">,
  temperature_degC: number,
): number {
  const cold_degC = conditions?.winter?.temperature_degC ?? FACTOR_degC;
  const mild_degC = Math.max(environment.temperature_degC, cold_degC + APART_K);
  return Math.min(1, Math.max(0, (mild_degC - temperature_degC) / (mild_degC - cold_degC)));
}

/** Temperature for which a winter that is a factor is taken to hold. Assumed. */
const FACTOR_degC = 0;

/**
 * The weather of a day of a temperature, between the job's own and its driven winter: all that is other in winter is as far on its way as
 * the temperature is, and beyond winter's temperature it is the temperature alone that goes on. At either end it is that condition.
 */
export function weatherAt(job: Pick<Job, "environment" | "conditions">, temperature_degC: number): DrivenIn {
  const winter = job.conditions?.winter;
  const share = winterShare(job, temperature_degC);
  if (winter === undefined) return {};
  const between = (atWinter: number) => 1 + share * (atWinter - 1);
  const warmer_K = (cells_degC: number | undefined, air_degC: number) =>
    cells_degC === undefined ? 0 : cells_degC - air_degC;
  const { pack_degC, temperature_degC: mild_degC } = job.environment;
  const cells_K =
    share * warmer_K(winter.pack_degC, winter.temperature_degC) + (1 - share) * warmer_K(pack_degC, mild_degC);
  const weather: Weather = {
    ...winter,
    temperature_degC,
    pack_degC: temperature_degC + cells_K,
    heat: heatAt(winter, temperature_degC, share),
    drag_ratio: between(winter.drag_ratio),
    rolling_ratio: between(winter.rolling_ratio),
    usable_frac: between(winter.usable_frac),
    resistance_ratio: between(winter.resistance_ratio),
    wind_kmh: share * winter.wind_kmh,
  };
  return { weather, winter_frac: share };
}

/** A thermostat is turned up as winter comes: from the air's temperature to what is wanted in winter. */
function heatAt({ heat }: Weather, air_degC: number, share: number): Weather["heat"] {
  return heat.kind === "thermostat" ? { ...heat, cabin_degC: air_degC + share * (heat.cabin_degC - air_degC) } : heat;
}
