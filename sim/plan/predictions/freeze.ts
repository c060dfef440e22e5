import { decidingState } from "../../../shared/job/decidingState.ts";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job, Prediction } from "../../../shared/job/job.ts";
import { PREDICTION_LAYOUT, type PredictedPack } from "../../../shared/job/schema/predictions.ts";
import { PROGRAM_VERSION } from "../../../shared/programVersion.ts";
import type { Answer } from "../answer/answer.ts";
import type { PackAnswer } from "../answer/packAnswer.ts";
import type { Candidate, DriveReport } from "../driveReport.ts";
import { inputDigest, roadDigest } from "./digests.ts";

/** What a job's packs did on its driven road, and the answer from it with its bands. */
export interface Reports {
  readonly runs: Pick<DriveReport, "candidates" | "trace">;
  readonly answer: Answer;
}

/**
 * The prediction of a job as it is now, to be kept in it: what decides its answer, the results pack by pack, the version of the program
 * and a digest of the inputs. `reports` are of this very job on its driven road; `at` is the moment as ISO 8601, since nothing here knows
 * the time. It shares no list with the job that an edit of the job would change.
 */
export function freeze(job: Job, { runs, answer }: Reports, at: string, note?: string): Prediction {
  const road = drivenRoad(job);
  if (runs.trace.id !== road.id)
    throw new Error(`a prediction of the road ${road.id} was asked from a drive of ${runs.trace.id}`);
  const state = decidingState(job);
  const digest = roadDigest(road);
  const spokenOf = answer.recommended === undefined ? undefined : answer.packs[answer.recommended].name;
  return structuredCloned({
    layout: PREDICTION_LAYOUT,
    at,
    program: PROGRAM_VERSION,
    digest: inputDigest(state, digest),
    ...(note !== undefined && note.trim() !== "" && { note: note.trim() }),
    state,
    road: {
      id: road.id,
      title: road.title,
      digest,
      distance_km: runs.trace.distance_km,
      duration_s: runs.trace.duration_s,
      climb_m: runs.trace.climb_m,
    },
    ...(spokenOf !== undefined && { recommended: spokenOf }),
    packs: runs.candidates.map((candidate, i) => predictedPack(candidate, answer.packs[i])),
  });
}

/** The job with a prediction more; the oldest but the first goes where there is no room, since the quote is compared with longest. */
export function withPrediction(job: Job, prediction: Prediction, most = 24): Job {
  const kept = job.predictions.length < most ? job.predictions : job.predictions.filter((_, i) => i !== 1);
  return { ...job, predictions: [...kept, prediction] };
}

/** What is predicted of one pack: from its drive, and from its answer where it may be used. */
export function predictedPack(candidate: Candidate, answer: PackAnswer): PredictedPack {
  const { battery_A, charge_A, motor_Nm, motor_kW, motor_rpm, min_V } = candidate.peak;
  return {
    name: candidate.name,
    ...(answer.verdict && { verdict: answer.verdict }),
    mass_kg: candidate.pack.mass_kg,
    testMass_kg: candidate.testMass_kg,
    usable_kWh: candidate.pack.usable_kWh,
    distance_km: candidate.distance_km,
    battery_Whpkm: candidate.battery_Whpkm,
    wall_Whpkm: candidate.wall_Whpkm,
    regen_Wh: candidate.regen_Wh,
    rmsBattery_A: candidate.rmsBattery_A,
    peak: { battery_A, charge_A, motor_Nm, motor_kW, motor_rpm, min_V },
    ledger_Wh: { ...candidate.ledger_Wh },
    ...(answer.range && { range_km: answer.range }),
    ...(answer.left && { left_km: answer.left }),
    ...(answer.isAtLeast && { isAtLeast: true }),
  };
}

/** A copy that shares nothing; what a job holds is plain data. */
function structuredCloned<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
