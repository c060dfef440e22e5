import type { Job } from "../../../shared/job/job.ts";
import { message, quantity as q } from "../../../shared/quantity/message.ts";
import { WH_PER_KWH } from "../../../shared/units.ts";
import type { Candidate, Finding, RefusedBraking } from "../driveReport.ts";
import { note, roadLength, warning } from "./finding.ts";

/** On a longer piece without braking by the motor a driver should know beforehand. Assumed. */
const LONG_km = 0.5;

/** Braking by the motor that the pack refuses, being full or cold: where, how much, and what to do about it. */
export function regenFindings(job: Job, { refused: { full, cold }, soc }: Candidate): Finding[] {
  const found: Finding[] = [];
  if (full) {
    const remedy =
      full.start_frac === undefined
        ? message`It refuses some of it at any charge.`
        : message`Charged to ${q("fraction", full.start_frac, 2)}, it takes all of it.`;
    found.push(
      weighed(full)(
        "regenRefusedFull",
        message`Charged to ${q("fraction", soc.start_frac, 2)}, the pack refuses braking by the motor on ${roadLength(full.distance_km)} of this road: the friction brakes do that alone, and ${energy(full)} are not regained. ${remedy}`,
      ),
    );
  }
  if (cold) {
    const pack_degC = job.environment.pack_degC ?? job.environment.temperature_degC;
    found.push(
      weighed(cold)(
        "regenRefusedCold",
        message`At ${q("temperature", pack_degC)} the cells take little charge or none: braking by the motor is refused or weak on ${roadLength(cold.distance_km)} of this road, and ${energy(cold)} are not regained.`,
      ),
    );
  }
  return found;
}

function weighed({ distance_km }: RefusedBraking): typeof note {
  return distance_km > LONG_km ? warning : note;
}

function energy({ energy_Wh }: RefusedBraking) {
  return q("energy", energy_Wh / WH_PER_KWH, 2);
}
