import fc from "fast-check";
import { InputError } from "../../shared/problems.ts";
import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { type Fixes, hasValues } from "../../sim/route/log/fixes.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { splitTrips } from "../../sim/route/trips/splitTrips.ts";
import { makeLog, makeTruth, openSky } from "./logMaker.ts";
import { writeCsv, writeGpx, writeNmea } from "./logWriter.ts";

const speeds_mps = Array.from({ length: 90 }, (_, i) => Math.max(0, 12 * Math.sin(i / 12)));
const rows = makeLog(makeTruth(speeds_mps, 5), { ...openSky, seed: 6 });
const encoder = new TextEncoder();
const decoder = new TextDecoder();
const csv = decoder.decode(writeCsv(rows));
const long = rows.flatMap((row, i) => [
  `${i};gps_lat;${row.latitude_deg}`,
  `${i};gps_lon;${row.longitude_deg}`,
  `${i};speed [km/h];${row.speed_mps}`,
]);

/** Whole logs of every form, to be damaged. */
export const soundLogs: Readonly<Record<string, Uint8Array>> = {
  gpx: writeGpx(rows),
  nmea: writeNmea(rows),
  csv: encoder.encode(csv),
  comma: encoder.encode(csv.replaceAll(",", ";").replaceAll(".", ",")),
  long: encoder.encode(`seconds;signal;value\n${long.join("\n")}\n`),
  utf16: Uint8Array.from([0xff, 0xfe, ...[...csv].flatMap((letter) => [letter.charCodeAt(0), 0])]),
};

/** One way of damaging bytes; places are shares of the length, so that a case shrinks well. */
export type Damage =
  | { readonly kind: "flip" | "digit"; readonly at_frac: number; readonly byte: number }
  | { readonly kind: "delete" | "double" | "cut"; readonly at_frac: number; readonly byte: number }
  | { readonly kind: "insert"; readonly at_frac: number; readonly text: string };

const hostile = [
  "<",
  ">",
  "&",
  '"',
  "'",
  "]]>",
  "<![CDATA[",
  "<!--",
  "\u0000",
  "\r",
  "\n\n",
  ",,,,",
  ";",
  "\t",
  "NaN",
  "Infinity",
  "-",
  "1e999",
  "e",
  "$GPRMC,",
  "$GPGGA,,,,,,,,,,,,,,*56",
  "</trkpt>",
  "<trkpt>",
  '<trkpt lat="91" lon="0"/>',
  "<time/>",
  "2024-13-45T99:99:99Z",
  "9".repeat(400),
  "\uFFFD",
];
const place = fc.integer({ min: 0, max: 999_999 }).map((n) => n / 1e6);
const damage: fc.Arbitrary<Damage> = fc.oneof(
  fc.record({ kind: fc.constantFrom("flip" as const, "digit" as const), at_frac: place, byte: fc.nat(255) }),
  fc.record({
    kind: fc.constantFrom("delete" as const, "double" as const, "cut" as const),
    at_frac: place,
    byte: fc.nat(255),
  }),
  fc.record({ kind: fc.constant("insert" as const), at_frac: place, text: fc.constantFrom(...hostile) }),
);
export const damages = fc.array(damage, { minLength: 1, maxLength: 12 });

/** The bytes after all damages, one after another. */
export function damaged(bytes: Uint8Array, list: readonly Damage[]): Uint8Array {
  let result: number[] = Array.from(bytes);
  for (const one of list) {
    const at = Math.floor(one.at_frac * result.length);
    if (one.kind === "flip") {
      result[at] = one.byte;
    } else if (one.kind === "digit") {
      const next = result.findIndex((byte, i) => i >= at && byte >= 48 && byte <= 57);
      if (next >= 0) {
        result[next] = 48 + (one.byte % 10);
      }
    } else if (one.kind === "delete") {
      result.splice(at, one.byte);
    } else if (one.kind === "double") {
      result.splice(at, 0, ...result.slice(at, at + 4 * one.byte));
    } else if (one.kind === "cut") {
      result = result.slice(0, Math.max(at, Math.floor(result.length / 3)));
    } else if (one.kind === "insert") {
      result.splice(at, 0, ...encoder.encode(one.text));
    }
  }
  return Uint8Array.from(result);
}

/**
 * Reads, cleans and splits whatever the bytes are, and throws a plain error where a rule is broken: nothing but InputError
 * comes out, columns hold a value within its bounds or NaN for "not logged", the cleaned series is finite and not negative.
 * Returns how far it came.
 */
export function digest(bytes: Uint8Array): "refused" | "read" | "cleaned" {
  try {
    const log = readLog("fuzz", bytes);
    checkFixes(log.fixes);
    if (!hasValues(log.fixes.time_s)) {
      return "read";
    }
    const cleaned = cleanLog(log);
    const { series } = cleaned;
    for (let i = 0; i < series.count; i++) {
      const isSound =
        Number.isFinite(series.time_s[i]) &&
        series.speed_mps[i] >= 0 &&
        series.speed_mps[i] < 200 &&
        Number.isFinite(series.distance_m[i]) &&
        (Number.isNaN(series.elevation_m[i]) || Math.abs(series.elevation_m[i]) < 1e5);
      if (!isSound) {
        throw new Error(
          `row ${i}: ${series.time_s[i]} ${series.speed_mps[i]} ${series.distance_m[i]} ${series.elevation_m[i]}`,
        );
      }
    }
    splitTrips(cleaned);
    return "cleaned";
  } catch (error) {
    if (error instanceof InputError) {
      return "refused";
    }
    throw error;
  }
}

function checkFixes(fixes: Fixes): void {
  const within = (value: number, least: number, most: number) =>
    Number.isNaN(value) || (value >= least && value <= most);
  for (let i = 0; i < fixes.count; i++) {
    const isSound =
      within(fixes.time_s[i], -1e11, 1e11) &&
      within(fixes.latitude_deg[i], -90, 90) &&
      within(fixes.longitude_deg[i], -180, 180) &&
      within(fixes.speed_mps[i], 0, 1000) &&
      within(fixes.elevation_m[i], -500, 30000) &&
      Number.isNaN(fixes.latitude_deg[i]) === Number.isNaN(fixes.longitude_deg[i]);
    if (!isSound) {
      throw new Error(
        `fix ${i}: ${fixes.time_s[i]} ${fixes.latitude_deg[i]} ${fixes.longitude_deg[i]} ${fixes.speed_mps[i]} ${fixes.elevation_m[i]}`,
      );
    }
  }
}
