import type { Problem } from "../../../shared/problems.ts";
import type { Fixes } from "./fixes.ts";

export type LogFormat = "gpx" | "tcx" | "kml" | "nmea" | "table";
export const speedUnits = ["kmh", "mph", "mps", "knots"] as const;
export type SpeedUnit = (typeof speedUnits)[number];
export const hemispheres = ["NE", "NW", "SE", "SW"] as const;
export type Hemisphere = (typeof hemispheres)[number];

/** What a column of a table holds. `name`, `value` and `unit` belong to tables with one value a row. */
export const columnRoles = [
  "time",
  "date",
  "lat",
  "lon",
  "latHemisphere",
  "lonHemisphere",
  "speed",
  "height",
  "accuracy",
  "hdop",
  "packVoltage",
  "packCurrent",
  "motorSpeed",
  "temperature",
  "stateOfCharge",
  "vehicle",
  "name",
  "value",
  "unit",
] as const;
export type ColumnRole = (typeof columnRoles)[number];

/** Answers to what a log itself may leave open. Whatever is given here wins over the file's evidence. */
export interface ReadLogOptions {
  readonly speedUnit?: SpeedUnit | undefined;
  readonly hemisphere?: Hemisphere | undefined;
  /** Time between rows of a log without times, from 0.01 s to 3600 s. */
  readonly interval_s?: number | undefined;
  /** Day of the first fix as `YYYY-MM-DD`, for logs with a clock and no date. */
  readonly date?: string | undefined;
  /** Column of a table (counted from 0) for a role, or "none" to leave the role empty; the rest stays as guessed. */
  readonly columns?: Partial<Record<ColumnRole, number | "none">> | undefined;
  /** Which car, where one file holds several: its words in the column of vehicles, or its track's name. */
  readonly vehicle?: string | undefined;
  /** +1 where positive amps leave the pack, -1 where they charge it. */
  readonly currentSign?: 1 | -1 | undefined;
  /** A table of the pack's volts and amps is read too where it has neither speeds nor positions. */
  readonly isPackWanted?: boolean | undefined;
}

/** How one column (or element, or sentence) was understood, and why. */
export interface ColumnGuess {
  readonly index: number;
  readonly header: string;
  readonly role: ColumnRole | "none";
  readonly unit: string;
  readonly evidence: string;
  readonly sample: string;
}

/** How the file as a whole was understood. */
export interface LogGuess {
  readonly encoding: string;
  /** Delimiter, decimal sign, header line, time form and such, in words. */
  readonly layout: readonly string[];
  readonly columns: readonly ColumnGuess[];
}

/**
 * Something the file leaves open. `decided` says whether the evidence is enough; where it is not, a person must be
 * asked, with `guess` pre-set ("" where there is no sensible guess).
 */
export interface Question {
  readonly name: "speedUnit" | "hemisphere" | "interval" | "date" | "currentSign" | "speeds" | "vehicle";
  /** The command-line option that answers it; "" where none does. */
  readonly option: string;
  readonly choices: readonly string[];
  readonly guess: string;
  readonly evidence: string;
  readonly decided: boolean;
}

/** One log, read and not yet cleaned. */
export interface LogFile {
  readonly file: string;
  readonly format: LogFormat;
  readonly fixes: Fixes;
  /** False where the file has positions and no times: a planned route, not a drive. */
  readonly hasTimes: boolean;
  /** True where the times carry a zone (or are UTC by the format's rule), so that no clock change can be in them. */
  readonly hasZone: boolean;
  /** Local time less UTC where the file states it, else 0. */
  readonly utcOffset_s: number;
  /** Lines, points or sentences that could not be used. */
  readonly badLines: number;
  /** What was found wrong, with line numbers; long lists are cut and say so. */
  readonly problems: readonly Problem[];
  readonly guess: LogGuess;
  readonly questions: readonly Question[];
}

/** What a reader of one format gives back; `readLog` adds the file's name and asks what is common to all formats. */
export type FormatReading = Omit<LogFile, "file" | "format"> & {
  /** What the tracks are called, by the number of the segment; where the format has names. */
  readonly trackNames?: readonly string[];
};
