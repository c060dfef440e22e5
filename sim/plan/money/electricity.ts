import type { Job } from "../../../shared/job/job.ts";
import { J_PER_KWH, M_PER_KM } from "../../../shared/units.ts";
import { type ChargeRow, type DayRefill, winterEnergy_ratio } from "../charging/chargeRow.ts";
import { perMetre_J } from "../charging/dayEnergy.ts";
import type { Candidate } from "../driveReport.ts";
import { between, type Span } from "./span.ts";

/**
 * Share of a year's driving that takes the energy of a winter's day: none of it where winters are mild, half of it where they are
 * long. Assumed: three months, none to six.
 */
const WINTER_LOW_frac = 0;
const WINTER_HIGH_frac = 0.5;

/** What the driving of a year takes from the wall at one supply, for each kilometre. */
export interface Electricity {
  readonly supply: string;
  readonly wall_kWhpkm: Span;
  /** In the job's currency; absent where the supply has no price. */
  readonly costPerKm?: Span;
}

/**
 * Energy from the wall and its cost for a kilometre of the usual day: of the charge that puts the day back, with all losses of
 * charger, cells and the car's own draw, and the tariff hour by hour. Nothing for a car that does not drive its road or is not charged there.
 */
export function electricityAt(
  row: ChargeRow,
  candidate: Candidate,
  job: Pick<Job, "usualDay_km" | "allowance">,
): Electricity | undefined {
  const each_J = perMetre_J(candidate);
  const { usualDay, winterDay } = row;
  if (each_J === undefined || !usualDay || !winterDay) return undefined;
  const day_kWh = (each_J * job.usualDay_km * M_PER_KM) / J_PER_KWH;
  const usual = perKilometre(usualDay, day_kWh, job.usualDay_km);
  const winter = perKilometre(winterDay, day_kWh * winterEnergy_ratio(job, candidate), job.usualDay_km);
  return {
    supply: row.supply,
    wall_kWhpkm: overYear(usual.wall_kWhpkm, winter.wall_kWhpkm),
    ...(usual.cost !== undefined && winter.cost !== undefined && { costPerKm: overYear(usual.cost, winter.cost) }),
  };
}

/** A day that takes more than the pack holds is charged in parts: at the rate of the whole pack. */
function perKilometre({ wall_kWh, stored_kWh, cost }: DayRefill, day_kWh: number, day_km: number) {
  const perKm = day_kWh / stored_kWh / day_km;
  return { wall_kWhpkm: wall_kWh * perKm, cost: cost === undefined ? undefined : cost * perKm };
}

function overYear(usual: number, winter: number): Span {
  const with_frac = (share: number) => usual + share * (winter - usual);
  return between(with_frac(WINTER_LOW_frac), with_frac(WINTER_HIGH_frac));
}
