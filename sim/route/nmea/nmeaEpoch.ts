import { MPS_PER_KMH, MPS_PER_KNOT } from "../../../shared/units.ts";
import { accuracyOfHdop_m } from "../log/accuracyOfHdop.ts";
import { bounded, fixBounds } from "../log/fixBounds.ts";
import { emptyFix, type Fix } from "../log/fixes.ts";
import { dayStart_s } from "../log/readTime.ts";
import type { Sentence } from "./nmeaSentence.ts";
import { nmeaDay_s } from "./nmeaTime.ts";

/** What the sentences of one moment said. */
export interface NmeaEpoch extends Omit<Fix, "time_s" | "segment" | "extras"> {
  readonly clock_s: number;
  day_s: number;
  isVoid: boolean;
}

/** A moment of which nothing is said yet but its clock. */
export function emptyEpoch(clock_s: number, line: number): NmeaEpoch {
  const { time_s: _time_s, segment: _segment, extras: _extras, ...empty } = emptyFix(line, 0);
  return { ...empty, clock_s, day_s: Number.NaN, isVoid: false };
}

/** Adds what one more sentence of the moment says: RMC, GGA, GNS, VTG or ZDA [NMEA0183, sentence formats]. */
export function addSentence(epoch: NmeaEpoch, { type, fields }: Sentence): void {
  if (type === "VTG") {
    setSpeed(epoch, number(fields[7]) * MPS_PER_KMH);
  } else if (type === "RMC") {
    epoch.day_s = nmeaDay_s(fields[9]) ?? epoch.day_s;
    epoch.isVoid ||= fields[2] !== "A";
    setSpeed(epoch, number(fields[7]) * MPS_PER_KNOT);
    setPlace(epoch, fields.slice(3, 7));
  } else if (type === "GGA" || type === "GNS") {
    epoch.isVoid ||= type === "GGA" ? !(number(fields[6]) > 0) : /^N*$/.test(fields[6] ?? "");
    epoch.elevation_m = bounded(number(fields[9]), fixBounds.elevation_m);
    epoch.accuracy_m = accuracyOfHdop_m(number(fields[8]));
    setPlace(epoch, fields.slice(2, 6));
  } else {
    epoch.day_s = dayStart_s(number(fields[4]), number(fields[3]), number(fields[2])) ?? epoch.day_s;
  }
}

function setSpeed(epoch: NmeaEpoch, speed_mps: number): void {
  if (!Number.isNaN(speed_mps)) {
    epoch.speed_mps = bounded(speed_mps, fixBounds.speed_mps);
  }
}

/** Latitude as ddmm.mmm, its letter, longitude as dddmm.mmm, its letter. */
function setPlace(epoch: NmeaEpoch, [lat, north, lon, east]: readonly string[]): void {
  const latitude_deg = bounded(angle_deg(lat, north), fixBounds.latitude_deg);
  const longitude_deg = bounded(angle_deg(lon, east), fixBounds.longitude_deg);
  if (!Number.isNaN(latitude_deg) && !Number.isNaN(longitude_deg)) {
    epoch.latitude_deg = latitude_deg;
    epoch.longitude_deg = longitude_deg;
  }
}

/** Degrees of an angle whose last two digits before the point are minutes; south and west are negative. NaN where there is none. */
function angle_deg(field: string | undefined, letter: string | undefined): number {
  const value = number(field);
  const whole = Math.trunc(value / 100);
  const minutes = value - 100 * whole;
  if (!letter || !(minutes < 60)) {
    return Number.NaN;
  }
  return (letter === "S" || letter === "W" ? -1 : 1) * (whole + minutes / 60);
}

/** The number in a field, NaN where it is empty or holds none. */
function number(field: string | undefined): number {
  return field !== undefined && /^-?\d{1,9}(?:\.\d{0,12})?$/.test(field) ? Number(field) : Number.NaN;
}
