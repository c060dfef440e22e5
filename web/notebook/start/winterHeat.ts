import type { Job } from "../../../shared/job/job.ts";
import { firstUse_Whpkm } from "./startingDrive.ts";

/** How a car is kept warm in winter, and what that draws from the pack while driving. */
export interface Heating {
  readonly id: string;
  readonly words: string;
  readonly power_W: number;
}

/** By the hour, not by the kilometre. Common practice, no source. */
export const heatings: readonly Heating[] = [
  { id: "none", words: "Not at all: coat and rug", power_W: 0 },
  { id: "demister", words: "The windscreen only: demister, 0.3 kW", power_W: 300 },
  { id: "small", words: "Electric heater in a small cabin, 1.5 kW", power_W: 1500 },
  { id: "large", words: "Electric heater in a large cabin, 3 kW", power_W: 3000 },
  { id: "fuel", words: "Heater that burns fuel, its fan 0.1 kW", power_W: 100 },
];

/** Denser air, stiffer tyres, thicker oil, lights and wipers: energy in winter over today's. Common practice, no source. */
const COLD_DRIVE_ratio = 1.1;
/** Of what a pack gives in summer, 0.80 to 0.90 between 0 and -5 degC: common practice, no source. */
const COLD_PACK_frac = 0.9;
/** How far such a rule may be off. Assumed. */
const BAND_frac = 0.15;

/** Mean speed of each road that a job begins with, to a whole km/h; held to the cycles themselves by a test. */
export const meanSpeeds_kmh: Readonly<Record<string, number>> = { lanes: 39, town: 31, country: 78, mixed: 46 };
const OTHER_ROAD_kmh = 40;

/**
 * Energy of a winter's day over today's: what the cold takes, and the heater by the hour, so that a slow road costs more of it per km.
 *
 *   ratio = (COLD_DRIVE + P / (v e)) / COLD_PACK, with the mean speed v and today's use e per km
 */
export function winterRatio(job: Job, roadId: string, { power_W }: Heating): number {
  const speed_kmh = meanSpeeds_kmh[roadId] ?? OTHER_ROAD_kmh;
  const heat_ratio = power_W / (speed_kmh * firstUse_Whpkm(job));
  const ratio = (COLD_DRIVE_ratio + heat_ratio) / COLD_PACK_frac;
  return Math.min(3, Number(ratio.toFixed(2)));
}

/** The job with its winter reckoned from how the car is heated. */
export function withHeating(job: Job, roadId: string, heating: Heating): Job {
  const winter_ratio = winterRatio(job, roadId, heating);
  const note = heating.words;
  return {
    ...job,
    allowance: { ...job.allowance, winter_ratio },
    origins: { ...job.origins, [WINTER]: { from: "usual", plusMinus_frac: BAND_frac, note } },
  };
}

/** The heating that a job's winter was reckoned from, if any. */
export function heatingOf({ origins }: Job): Heating | undefined {
  const note = origins[WINTER]?.note;
  return heatings.find(({ words }) => words === note);
}

const WINTER = "allowance.winter_ratio";
