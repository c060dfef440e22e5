/** Columns a log may carry beside the drive itself; kept for comparing a prediction with a log. */
export const extraNames = ["packVoltage_V", "packCurrent_A", "motorSpeed_radps", "temperature_K", "soc_frac"] as const;
export type ExtraName = (typeof extraNames)[number];

/**
 * A log as columns of one length, one row a fix, in the order of the file. NaN stands for "the file has no value here"
 * and for nothing else. `time_s` counts from 1970-01-01 UTC (or from the log's start where the file has no date).
 */
export interface Fixes {
  readonly count: number;
  readonly time_s: Float64Array;
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
  readonly speed_mps: Float64Array;
  readonly elevation_m: Float64Array;
  /** Standard deviation of the position per axis as the receiver states it. */
  readonly accuracy_m: Float64Array;
  /** Line of the file the fix came from, counted from 1. */
  readonly line: Uint32Array;
  /** Where it changes, the recorder itself broke the record (a new track segment). */
  readonly segment: Uint32Array;
  readonly extras: Partial<Readonly<Record<ExtraName, Float64Array>>>;
}

/** One fix on its way into the columns. */
export interface Fix {
  time_s: number;
  latitude_deg: number;
  longitude_deg: number;
  speed_mps: number;
  elevation_m: number;
  accuracy_m: number;
  line: number;
  segment: number;
  extras: Partial<Record<ExtraName, number>>;
}

/** A fix with no value in it yet. */
export function emptyFix(line: number, segment: number): Fix {
  return {
    time_s: Number.NaN,
    latitude_deg: Number.NaN,
    longitude_deg: Number.NaN,
    speed_mps: Number.NaN,
    elevation_m: Number.NaN,
    accuracy_m: Number.NaN,
    line,
    segment,
    extras: {},
  };
}

/** True where any row of the column has a value. */
export function hasValues(column: Float64Array): boolean {
  for (let i = 0; i < column.length; i++) {
    if (!Number.isNaN(column[i])) {
      return true;
    }
  }
  return false;
}

/** The fixes for which the function is true, in order. */
export function keptFixes(fixes: Fixes, isKept: (i: number) => boolean): Fixes {
  const rows: number[] = [];
  for (let i = 0; i < fixes.count; i++) if (isKept(i)) rows.push(i);
  const pick = (column: Float64Array) => Float64Array.from(rows, (i) => column[i]);
  const extras: Partial<Record<ExtraName, Float64Array>> = {};
  for (const name of extraNames) {
    const column = fixes.extras[name];
    if (column) extras[name] = pick(column);
  }
  return {
    count: rows.length,
    time_s: pick(fixes.time_s),
    latitude_deg: pick(fixes.latitude_deg),
    longitude_deg: pick(fixes.longitude_deg),
    speed_mps: pick(fixes.speed_mps),
    elevation_m: pick(fixes.elevation_m),
    accuracy_m: pick(fixes.accuracy_m),
    line: Uint32Array.from(rows, (i) => fixes.line[i]),
    segment: Uint32Array.from(rows, (i) => fixes.segment[i]),
    extras,
  };
}
