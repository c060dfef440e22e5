import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { WH_PER_KWH } from "../../../shared/units.ts";
import { FUEL_PER_LITRE_kWh } from "../../constants.ts";

/**
 * Share of the heat in its fuel that an old engine brings to the wheels over mixed driving, from short cold trips to steady roads.
 * Common practice, no source; wide on purpose.
 */
const TO_WHEELS_frac = {
  petrol: { low: 0.1, high: 0.22 },
  diesel: { low: 0.15, high: 0.3 },
} as const;

/** What the client's fuel record says of the energy at the wheels, beside what a road asks for there. */
export interface FuelCheck {
  readonly fuel: "petrol" | "diesel";
  readonly use_l100km: number;
  readonly tank_Whpkm: number;
  readonly wheelLow_Whpkm: number;
  readonly wheelHigh_Whpkm: number;
  readonly road_Whpkm: number;
  readonly verdict: "agrees" | "roadAsksLess" | "roadAsksMore";
}

/**
 * The check where the job has a fuel record and the road was driven: litres times heat of a litre times the share that reaches the
 * wheels, the record's own band on top.
 *
 *   wheels = l/100 km / 100 · heat · share
 */
export function fuelCheck(
  { costs, origins }: Pick<Job, "costs" | "origins">,
  road_Whpkm: number,
): FuelCheck | undefined {
  const running = costs?.running;
  if (running === undefined || !(road_Whpkm > 0)) return undefined;
  const { fuel, use_l100km } = running;
  const open_frac = origins["costs.running.use_l100km"]?.plusMinus_frac ?? 0;
  const tank_Whpkm = (use_l100km / 100) * FUEL_PER_LITRE_kWh[fuel] * WH_PER_KWH;
  const { low, high } = TO_WHEELS_frac[fuel];
  const wheelLow_Whpkm = tank_Whpkm * Math.max(0, 1 - open_frac) * low;
  const wheelHigh_Whpkm = tank_Whpkm * (1 + open_frac) * high;
  const verdict =
    road_Whpkm < wheelLow_Whpkm ? "roadAsksLess" : road_Whpkm > wheelHigh_Whpkm ? "roadAsksMore" : "agrees";
  return { fuel, use_l100km, tank_Whpkm, wheelLow_Whpkm, wheelHigh_Whpkm, road_Whpkm, verdict };
}

const verdicts = {
  agrees: "the two agree",
  roadAsksLess: "less than that; mass, tyres or drag may be set too low, or the record is of colder, shorter drives",
  roadAsksMore: "more than that; mass, tyres or drag may be set too high, or the record is of easier roads",
} as const;

/** The check in a sentence. */
export function fuelCheckWords(check: FuelCheck): Message {
  const { fuel, use_l100km, tank_Whpkm, wheelLow_Whpkm, wheelHigh_Whpkm, road_Whpkm, verdict } = check;
  const { low, high } = TO_WHEELS_frac[fuel];
  return message`By the fuel record, a cross-check and no more: ${q("fuelUse", use_l100km)} of ${fuel} is ${q("energyUse", tank_Whpkm)} in the tank, of which an old engine brings ${q("fraction", low, 2)} to ${q("fraction", high, 2)} to the wheels (common practice, no source), ${q("energyUse", wheelLow_Whpkm, 2)} to ${q("energyUse", wheelHigh_Whpkm, 2)}; this road asks for ${q("energyUse", road_Whpkm)} there: ${verdicts[verdict]}.`;
}
