import type { Question } from "../../sim/index.ts";
import type {
  Brought,
  DayRow,
  Drive,
  FileReading,
  MadeRoad,
  RoadsApi,
  TripRow,
} from "../../web/worker/roads/roadsApi.ts";
import { noRoads } from "./noRoads.ts";

// A log as the worker answers with it, made up: nothing is read.

export function logTrip(distance_m: number, date = "2024-05-03"): TripRow {
  const times = { date, clock: "08:12", duration_s: 600, mean_mps: distance_m / 600, max_mps: 20, stops: 2 };
  return { ...times, distance_m, like: "a cycle", difference: "slower", bridged_frac: 0 };
}

export function logDay(date: string, km: number): DayRow {
  return { date, trips: 1, distance_m: 1000 * km, driving_s: 3600, climb_m: 10 };
}

/** A good drive of one trip of 10 km, with a change. */
export function logDrive(change: Partial<Drive> = {}, quality: Partial<Drive["quality"]> = {}): Drive {
  return {
    kind: "drive",
    problems: [],
    repairs: [],
    isStill: false,
    hasPositions: true,
    hasHeights: true,
    utcOffset_s: 0,
    offsetFrom: "as the file has it",
    trips: [logTrip(10_000)],
    days: [logDay("2024-05-03", 10)],
    places: [],
    ...change,
    quality: {
      verdict: "good",
      reasons: ["a fix every second"],
      interval_s: 1,
      bridged_frac: 0,
      positionNoise_m: 3,
      speedSource: "recorded",
      heightSource: "recorded",
      noDrive: undefined,
      samplingNote: undefined,
      ...quality,
    },
  };
}

export function logQuestion(change: Partial<Question>): Question {
  return {
    name: "speedUnit",
    option: "--speed-unit",
    choices: ["kmh", "mph"],
    guess: "kmh",
    evidence: "at most 96 of them",
    decided: true,
    ...change,
  };
}

export function logReading(change: Partial<FileReading> = {}): FileReading {
  return {
    file: "week.csv",
    format: "table",
    hasTimes: true,
    hasZone: true,
    utcOffset_s: 0,
    badLines: 0,
    problems: [],
    guess: { encoding: "UTF-8", layout: ["commas between cells"], columns: [] },
    questions: [],
    count: 3600,
    hasSpeeds: true,
    ...change,
  };
}

export function broughtLog(change: Partial<Brought> = {}): Brought {
  return { files: [logReading()], leftOut: [], outcome: logDrive(), ...change };
}

/** A road as it is made of a log, a list or a route. */
export const madeRoad: MadeRoad = {
  road: { kind: "trace", title: "Made", time_s: [0, 10, 20], speed_kmh: [0, 36, 0] },
  distance_m: 100,
  duration_s: 20,
};

/** A worker that answers only what it is given answers for. */
export function answeringRoads(answers: Partial<RoadsApi>): RoadsApi {
  return Object.assign(Object.create(noRoads), answers);
}

/** Waits until everything that waits for an answer has had it. */
export function answered(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
