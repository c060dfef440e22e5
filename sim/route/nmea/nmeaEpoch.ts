import { MPS_PER_KMH } from "../../../shared/units.ts";
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
export function addSentence(epoch: NmeaEpoch, { parsed, fields }: Sentence): void {
  if (parsed.type === "VTG") {
    setSpeed(epoch, parsed.speed);
  } else if (parsed.type === "RMC") {
    epoch.day_s = nmeaDay_s(fields[9]) ?? epoch.day_s;
    epoch.isVoid ||= parsed.status !== "active";
    setSpeed(epoch, parsed.speed);
    setPlace(epoch, parsed.lat, parsed.lon);
  } else if (parsed.type === "GGA" || parsed.type === "GNS") {
    epoch.isVoid ||= parsed.type === "GGA" ? parsed.quality === null : /^N*$/.test(parsed.mode ?? "");
    epoch.elevation_m = bounded(parsed.alt, fixBounds.elevation_m);
    epoch.accuracy_m = accuracyOfHdop_m(parsed.hdop);
    setPlace(epoch, parsed.lat, parsed.lon);
  } else if (parsed.type === "ZDA") {
    epoch.day_s = dayStart_s(Number(fields[4]), Number(fields[3]), Number(fields[2])) ?? epoch.day_s;
  }
}

function setSpeed(epoch: NmeaEpoch, speed_kmh: number | null): void {
  if (speed_kmh !== null) {
    epoch.speed_mps = bounded(speed_kmh * MPS_PER_KMH, fixBounds.speed_mps);
  }
}

function setPlace(epoch: NmeaEpoch, latitude_deg: number | null, longitude_deg: number | null): void {
  const lat = bounded(latitude_deg, fixBounds.latitude_deg);
  const lon = bounded(longitude_deg, fixBounds.longitude_deg);
  if (!Number.isNaN(lat) && !Number.isNaN(lon)) {
    epoch.latitude_deg = lat;
    epoch.longitude_deg = lon;
  }
}
