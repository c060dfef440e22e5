import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { climbOf } from "../../sim/route/clean/heights/cleanHeights.ts";
import type { CleanedLog } from "../../sim/route/clean/report/cleanedLog.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { wheelEnergy_Jpm } from "../support/wheelEnergy.ts";
import { makeLog, makeTruth, type Spoiling, type Truth, withParking } from "./logMaker.ts";
import { writeGpx } from "./logWriter.ts";
import { stopsOf } from "./stopsOf.ts";

/** A road of waves: 30 m from valley to crest, so that 10 km hold a climb of 200 m. */
export function wavyElevation_m(distance_m: number): number {
  return 150 + 15 * (1 - Math.cos((2 * Math.PI * distance_m) / 1500));
}

export interface Accuracy {
  readonly distance_frac: number;
  readonly climb: { readonly true_m: number; readonly found_m: number };
  readonly stops: { readonly true: number; readonly found: number };
  readonly energy_frac: number;
  readonly log: CleanedLog;
  readonly truth: Truth;
}

/** A standard cycle with 5 minutes parked in its middle, spoilt, written, read and cleaned; what came back against what was. */
export function recover(
  cycle: string,
  spoiling: Spoiling,
  height: (distance_m: number) => number = wavyElevation_m,
): Accuracy {
  const truth = makeTruth(withParking(cycleSpeeds_mps(cycle), 300), spoiling.seed + 1000, height);
  const file = readLog("made.gpx", writeGpx(makeLog(truth, spoiling)));
  const log = cleanLog(file);
  const last = truth.time_s.length - 1;
  return {
    distance_frac: log.series.distance_m[log.series.count - 1] / truth.distance_m[last] - 1,
    climb: { true_m: climbOf(truth.elevation_m), found_m: climbOf(log.series.elevation_m) },
    stops: { true: stopsOf(truth.speed_mps), found: stopsOf(log.series.speed_mps) },
    energy_frac: wheelEnergy_Jpm(log.series.speed_mps) / wheelEnergy_Jpm(truth.speed_mps) - 1,
    log,
    truth,
  };
}
