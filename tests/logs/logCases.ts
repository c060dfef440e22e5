import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import type { CleanedLog } from "../../sim/route/clean/report/cleanedLog.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { wheelEnergy_Jpm } from "../support/wheelEnergy.ts";
import { type LogRow, makeLog, makeTruth, type Truth, withParking } from "./logMaker.ts";
import { writeGpx } from "./logWriter.ts";
import { phone, phoneLog } from "./phoneLog.ts";
import { wavyElevation_m } from "./routeAccuracy.ts";
import { stopsOf } from "./stopsOf.ts";
import { trafficDrive } from "./trafficDrive.ts";
import { windingDrive, windingLog } from "./windingDrive.ts";

/** A drive that is known exactly, and a receiver's log of it. */
export interface LogCase {
  readonly name: string;
  readonly truth: Truth;
  readonly rows: readonly LogRow[];
}

/** One log of each kind of drive by each of the three makers; positions wander by 3 to 8 m. Those that are not a cycle last so long. */
export function logCases(seed: number, sampling_s: number, hasSpeed: boolean, duration_s = 2400): LogCase[] {
  const cases: LogCase[] = [];
  const speed_mps = hasSpeed ? 0.15 : undefined;
  for (const cycle of ["udds", "wltc-class-3b"]) {
    for (const position_m of [3, 8]) {
      const truth = makeTruth(withParking(cycleSpeeds_mps(cycle), 300), seed + 1000, wavyElevation_m);
      const faults = { hasMultipath: true, hasDropouts: true };
      const spoiling = { seed, sampling_s, position_m, white_m: 0.5, speed_mps, elevation_m: position_m, ...faults };
      cases.push({ name: `cycle ${cycle} ${position_m} m`, truth, rows: makeLog(truth, spoiling) });
    }
  }
  for (const country of ["town", "hills"] as const) {
    const truth = windingDrive(country, seed + 500, duration_s);
    const rows = windingLog(truth, { seed, position_m: 5, speed_mps, elevation_m: 5 });
    const kept = rows.filter(({ time_s }) => Math.round(time_s) % sampling_s === 0);
    cases.push({ name: `winding ${country} 5 m`, truth, rows: kept });
  }
  for (const kind of ["city", "mixed"] as const) {
    const truth = trafficDrive(kind, seed, duration_s);
    const rows = phoneLog(truth, { ...phone, seed, sampling_s, hasSpeed, position_m: 4 });
    cases.push({ name: `phone ${kind} 4 m`, truth, rows });
  }
  return cases;
}

/** What came back of a case, against what was. */
export interface Recovered {
  /** Energy at the wheel with the hills, and as if the road were level. */
  readonly energy_frac: number;
  readonly level_frac: number;
  readonly distance_frac: number;
  readonly climb_frac: number;
  /** As the log states them, with those that do not show between thin fixes. */
  readonly stops: number;
  readonly trueStops: number;
  /** Whether the stated 10 to 90 % band of the energy holds the truth. */
  readonly isInBand: boolean;
  /** The same of distance and stops. */
  readonly isDistanceInBand: boolean;
  readonly areStopsInBand: boolean;
  readonly log: CleanedLog;
}

export function recovered({ truth, rows }: LogCase): Recovered {
  const log = cleanLog(readLog("made.gpx", writeGpx(rows)));
  const { series } = log;
  const trueDistance_m = truth.distance_m[truth.distance_m.length - 1];
  const distance_m = series.distance_m[series.count - 1];
  const trueEnergy_J = wheelEnergy_Jpm(truth.speed_mps, truth.elevation_m) * trueDistance_m;
  const energy_J = wheelEnergy_Jpm(series.speed_mps, series.elevation_m) * distance_m;
  const band = log.spread?.energy_ratio ?? { low: 1, high: 1 };
  const needed = trueEnergy_J / energy_J;
  const far = log.spread?.distance_ratio ?? { low: 1, high: 1 };
  const stopBand = log.stops?.band ?? { low: 0, high: 0 };
  const trueStops = stopsOf(truth.speed_mps);
  const climb = (elevation_m: Float64Array) =>
    elevation_m.reduce((sum, h, i) => sum + Math.max(0, h - (elevation_m[i - 1] ?? h)), 0);
  return {
    energy_frac: energy_J / trueEnergy_J - 1,
    level_frac:
      (wheelEnergy_Jpm(series.speed_mps) * distance_m) / (wheelEnergy_Jpm(truth.speed_mps) * trueDistance_m) - 1,
    distance_frac: distance_m / trueDistance_m - 1,
    climb_frac: climb(series.elevation_m) / climb(truth.elevation_m) - 1,
    stops: log.stops?.likely ?? stopsOf(series.speed_mps),
    trueStops,
    isInBand: needed >= band.low && needed <= band.high,
    isDistanceInBand: trueDistance_m / distance_m >= far.low && trueDistance_m / distance_m <= far.high,
    areStopsInBand: trueStops >= stopBand.low && trueStops <= stopBand.high,
    log,
  };
}
