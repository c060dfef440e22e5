import type { Spread } from "../../../../shared/spread.ts";
import type { LogFile } from "../../log/logFile.ts";
import type { Piece, RoadLoadTerms, Stops, Unmodelled } from "./spread.ts";

/** Classes of repair, each of which can be turned off to see the log without it. */
export const repairKinds = [
  "clockChange",
  "backwardTime",
  "duplicate",
  "zeroFix",
  "wildFix",
  "multipath",
  "tunnel",
  "signalLoss",
  "parked",
  "standingDrift",
  "speedScale",
  "speedNoise",
  "acceleration",
  "heightStep",
  "heightNoise",
  "gradient",
] as const;
export type RepairKind = (typeof repairKinds)[number];

/** One place where the log was mended. */
export interface RepairEvent {
  readonly from_s: number;
  readonly to_s: number;
  /** For a person: `1 fix 410 m off dropped at 08:12:05`. */
  readonly detail: string;
}

/** All repairs of one class. `count` counts fixes, gaps, stands or seconds as the detail says. */
export interface Repair {
  readonly kind: RepairKind;
  readonly count: number;
  readonly detail: string;
  readonly from_s: number;
  readonly to_s: number;
  /** The largest events, at most fifty, in order of time. */
  readonly events: readonly RepairEvent[];
}

export interface Quality {
  readonly verdict: "good" | "usable" | "poor";
  readonly reasons: readonly string[];
  /** Middle interval between fixes. */
  readonly interval_s: number;
  /** Share of the moving time that was bridged, not measured. */
  readonly bridged_frac: number;
  /** Standard deviation of the position per axis as the log itself shows it; NaN where it has no positions. */
  readonly positionNoise_m: number;
  /** `partly` where many fixes have no recorded speed: those come from the positions. */
  readonly speedSource: "recorded" | "partly" | "positions";
  readonly heightSource: "recorded" | "none";
  /** Why no road can be made of the log, where that is not standing: too short a move, or fixes too far apart. */
  readonly noDrive: string | undefined;
  /** What thin sampling leaves open of the energy at the wheel; undefined where fixes are dense. */
  readonly samplingNote: string | undefined;
}

/**
 * A car that stands at least this long, in seconds, is parked. Longer than traffic lights and level crossings hold it; surveys of travel by
 * receiver use 120 to 300 s (from memory, unconfirmed).
 */
export const PARKED_s = 180;

/** What one second of the cleaned series went through: bits of `flags`. */
export const Mended = { bridged: 1, standing: 2, multipath: 4, limited: 8 } as const;

/** The cleaned drive, one row a second. Rows at `breaks` begin a new segment: time before them was not logged. */
export interface CleanedSeries {
  readonly count: number;
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  /** Distance driven since the first row; stands still across a break. */
  readonly distance_m: Float64Array;
  /** Height of the drive that was taken, as uneven as roads are; NaN in a segment without heights. */
  readonly elevation_m: Float64Array;
  /** The middle of all heights that fit the log: nearest to the road's, and smoother than it. */
  readonly middleElevation_m: Float64Array;
  readonly flags: Uint8Array;
  readonly breaks: readonly number[];
}

/** Where the car was, for the map and for finding home and work. Kept apart: it never enters a trace. */
export interface Track {
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
}

/** A time without logging between two segments. */
export interface LongGap {
  /** Row of the series that begins after the gap. */
  readonly row: number;
  readonly kind: "parked" | "signalLoss";
  readonly from_s: number;
  readonly to_s: number;
  /** Straight distance between the fixes on both sides; NaN without positions. */
  readonly distance_m: number;
}

/** Speed and height as logged, after nothing but sorting, to be drawn beside the cleaned. NaN where not logged. */
export interface RawSeries {
  readonly time_s: Float64Array;
  /** Recorded, or from one position to the next where the log has no speeds. */
  readonly speed_mps: Float64Array;
  readonly elevation_m: Float64Array;
}

export interface CleanedLog {
  readonly series: CleanedSeries;
  /** Same length as the series; undefined where the log has no positions. */
  readonly track: Track | undefined;
  readonly raw: RawSeries;
  readonly gaps: readonly LongGap[];
  readonly repairs: readonly Repair[];
  readonly quality: Quality;
  /** True where the log, however long, goes nowhere: what happened in its gaps is not in doubt. */
  readonly isStill: boolean;
  /** What each draw needs, piece by piece of the series; none where the speeds are left as logged. */
  readonly pieces: readonly Piece[];
  readonly unmodelled: Unmodelled;
  /** How far the log leaves its energy, distance and climb open; undefined where nothing was drawn. */
  readonly spread: Spread | undefined;
  /** Undefined where nothing was drawn. */
  readonly stops: Stops | undefined;
}

export interface CleanOptions {
  /** Repairs left undone. Time must rise all the same: sorting and dropping of repeated times cannot be undone. */
  readonly off?: readonly RepairKind[] | undefined;
  /** Local time less UTC for the clocks in the details. */
  readonly utcOffset_s?: number | undefined;
  /** The same log and seed give the same road. */
  readonly seed?: number | undefined;
  /** The car for whose energy the middle of the draws is taken. */
  readonly roadLoad?: RoadLoadTerms | undefined;
}

/** What the cleaning needs of a log. */
export type CleanInput = Pick<LogFile, "file" | "fixes" | "hasZone">;
