import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { climbOf } from "../../sim/route/clean/heights/cleanHeights.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { wheelEnergy_Jpm } from "../support/wheelEnergy.ts";
import { writeGpx } from "./logWriter.ts";
import { stopsOf } from "./stopsOf.ts";
import { type Country, type WindingSpoiling, windingDrive, windingLog } from "./windingDrive.ts";

export interface Recovered {
  readonly distance_frac: number;
  /** Energy at the wheel per km, on the level and with the hills. */
  readonly level_frac: number;
  readonly hilly_frac: number;
  readonly climb: { readonly true_m: number; readonly found_m: number };
  readonly stops: { readonly true: number; readonly found: number };
  readonly duration_s: number;
}

/** A drive of the second maker, spoilt, written, read and cleaned; what came back against what was. */
export function recoverWinding(country: Country, spoiling: WindingSpoiling): Recovered {
  const truth = windingDrive(country, spoiling.seed + 500);
  const { series } = cleanLog(readLog("made.gpx", writeGpx(windingLog(truth, spoiling))));
  const last = truth.time_s.length - 1;
  return {
    distance_frac: series.distance_m[series.count - 1] / truth.distance_m[last] - 1,
    level_frac: wheelEnergy_Jpm(series.speed_mps) / wheelEnergy_Jpm(truth.speed_mps) - 1,
    hilly_frac:
      wheelEnergy_Jpm(series.speed_mps, series.elevation_m) / wheelEnergy_Jpm(truth.speed_mps, truth.elevation_m) - 1,
    climb: { true_m: climbOf(truth.elevation_m), found_m: climbOf(series.elevation_m) },
    stops: { true: stopsOf(truth.speed_mps), found: stopsOf(series.speed_mps) },
    duration_s: last,
  };
}
