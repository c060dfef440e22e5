import { decidingState } from "../../../shared/job/decidingState.ts";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job, Prediction } from "../../../shared/job/job.ts";
import type { PredictedPack } from "../../../shared/job/schema/predictions.ts";
import { PROGRAM_VERSION } from "../../../shared/programVersion.ts";
import { inputDigest, roadDigest } from "./digests.ts";
import { predictedPack, type Reports } from "./freeze.ts";

/** One pack as it was predicted, and as it is now; one of the two where it came or went. */
export interface PackBeside {
  readonly name: string;
  readonly then?: PredictedPack;
  readonly now?: PredictedPack;
}

/** Whether the program that froze a prediction is this one. */
export type ProgramAge = "same" | "older" | "newer";

/** What became of a job since a prediction of it was frozen. */
export interface Beside {
  readonly prediction: Prediction;
  readonly program: ProgramAge;
  /** Nothing that the answer hangs on has changed, the road included. */
  readonly isUnchanged: boolean;
  /** The road it was made on: as it was, changed in the job, another one driven now, or gone from the job. */
  readonly road: "same" | "changed" | "another" | "gone";
  /** Paths of inputs whose values are others now. */
  readonly changed: readonly string[];
  /** False where the kept inputs are no longer those that were frozen; not known where another version froze them. */
  readonly isWhole?: boolean;
  readonly packs: readonly PackBeside[];
}

/** A frozen prediction with the job as it is now beside it. `reports` are of the job now; without them only inputs are compared. */
export function compare(prediction: Prediction, job: Job, reports?: Reports): Beside {
  const state = decidingState(job);
  const road = roadNow(prediction, job);
  const changed = differences(prediction.state, state);
  const program = ageOf(prediction.program);
  const now = reports?.runs.candidates.map((candidate, i) => predictedPack(candidate, reports.answer.packs[i])) ?? [];
  const gone = now.filter(({ name }) => prediction.packs.every((then) => then.name !== name));
  return {
    prediction,
    program,
    isUnchanged: changed.length === 0 && road === "same",
    road,
    changed,
    ...(program === "same" && {
      isWhole: inputDigest(prediction.state, prediction.road.digest) === prediction.digest,
    }),
    packs: [
      ...prediction.packs.map((then): PackBeside => {
        const same = now.find(({ name }) => name === then.name);
        return { name: then.name, then, ...(same && { now: same }) };
      }),
      ...gone.map((each): PackBeside => ({ name: each.name, now: each })),
    ],
  };
}

/** How the version that froze a prediction stands to this one, number by number. */
export function ageOf(version: string, ours = PROGRAM_VERSION): ProgramAge {
  const [theirs, own] = [version, ours].map((each) => each.split(".").map(Number));
  const at = own.findIndex((number, i) => theirs[i] !== number);
  if (at < 0) return "same";
  return theirs[at] > own[at] ? "newer" : "older";
}

function roadNow({ road }: Prediction, job: Job): Beside["road"] {
  const same = job.roads.find(({ id }) => id === road.id);
  if (!same) return "gone";
  if (roadDigest(same) !== road.digest) return "changed";
  return drivenRoad(job) === same ? "same" : "another";
}

/**
 * Paths at which two states differ, in the order of the first. Where a value comes from counts as a change: bands hang on it. A list of
 * plain values is one value.
 */
function differences(then: unknown, now: unknown, path = ""): string[] {
  if (Object.is(then, now)) return [];
  const isList = Array.isArray(then) && Array.isArray(now);
  if (isList && [...then, ...now].every((each) => typeof each !== "object"))
    return JSON.stringify(then) === JSON.stringify(now) ? [] : [path];
  if (!isGroup(then) || !isGroup(now)) return [path];
  const keys = new Set([...Object.keys(then), ...Object.keys(now)]);
  return [...keys].flatMap((key) => differences(then[key], now[key], path === "" ? key : `${path}.${key}`));
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
