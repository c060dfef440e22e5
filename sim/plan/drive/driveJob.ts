import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { driveInConditions } from "../conditions/driveConditions.ts";
import type { Candidate, DriveReport } from "../driveReport.ts";
import { enoughFor } from "../enough.ts";
import { driveCandidate } from "./driveCandidate.ts";

/** Distances that packs drove may differ by this share and their Wh/km still mean the same drive. */
const SAME_DRIVE_frac = 0.01;

interface DriveOptions {
  /** Keeps each step of each pack, for drawing. */
  readonly channels?: boolean;
  /** Drives each in the conditions of the job too; so it does where not asked otherwise. */
  readonly conditions?: boolean;
}

/**
 * Every candidate pack of a job driven over a road: energy, range, peaks, what limited it, and which pack is enough.
 */
export function driveJob(job: Job, trace: Trace, options: DriveOptions = {}): DriveReport {
  const { channels = false, conditions = true } = options;
  const candidates = job.packs.map((pack) => {
    const candidate = driveCandidate(job, pack, trace, channels);
    return conditions ? { ...candidate, conditions: driveInConditions(job, pack, trace) } : candidate;
  });
  return reportOf(job, trace, candidates);
}

/** Some of a job's packs driven over a road, with their channels: a part of what `reportOf` puts together. */
export function drivePacks(job: Job, packIndexes: readonly number[], trace: Trace): Candidate[] {
  return packIndexes.map((index) => driveCandidate(job, job.packs[index], trace, true));
}

/** What follows from all packs of a job together, driven over the road: whether they can be compared, and which is enough. */
export function reportOf(job: Job, trace: Trace, candidates: readonly Candidate[]): DriveReport {
  const road = characteristics(trace);
  return {
    job: job.title,
    trace: {
      id: trace.id,
      title: trace.title,
      duration_s: road.duration_s,
      distance_km: road.distance_m / M_PER_KM,
      mean_kmh: road.mean_mps / MPS_PER_KMH,
      max_kmh: road.max_mps / MPS_PER_KMH,
      climb_m: road.climb_m ?? 0,
      descent_m: road.descent_m ?? 0,
    },
    candidates,
    isComparable: droveTheSame(candidates),
    enough: enoughFor(job, candidates),
  };
}

function droveTheSame(candidates: readonly Candidate[]): boolean {
  const driven_km = candidates.map(({ distance_km }) => distance_km);
  return Math.max(...driven_km) - Math.min(...driven_km) <= SAME_DRIVE_frac * Math.max(...driven_km);
}
