import type { ColumnRole, LogFile, RepairKind } from "../../sim/index.ts";

/** What only the forms of a log say: apart from the words of its staging, which the answer's script carries. */
export const formatWords: Readonly<Record<LogFile["format"], string>> = {
  gpx: "GPX",
  tcx: "TCX",
  kml: "KML",
  nmea: "NMEA 0183 sentences",
  table: "a table",
};

/** Without these no drive can be made: time must rise, and a stand without a log is no drive. */
export const neverOff: ReadonlySet<RepairKind> = new Set(["backwardTime", "duplicate", "parked"]);

export const roleWords: Readonly<Record<ColumnRole | "none", string>> = {
  none: "not used",
  time: "time",
  date: "date",
  lat: "latitude",
  lon: "longitude",
  latHemisphere: "north or south",
  lonHemisphere: "east or west",
  speed: "speed",
  height: "height",
  accuracy: "accuracy of the position",
  hdop: "dilution of precision",
  packVoltage: "pack voltage",
  packCurrent: "pack current",
  stateOfCharge: "state of charge",
  motorSpeed: "motor speed",
  temperature: "temperature",
  vehicle: "which car",
  name: "name of the value in this row",
  value: "value",
  unit: "unit",
};

export const choiceWords: Readonly<Record<string, string>> = {
  kmh: "km/h",
  mph: "miles an hour",
  mps: "m/s",
  knots: "knots",
  NE: "north, east of Greenwich",
  NW: "north, west of Greenwich",
  SE: "south, east of Greenwich",
  SW: "south, west of Greenwich",
};

/** `3 h 12 min`, `24 min` or `40 s`. */
export function durationWords(duration_s: number): string {
  const whole_s = Math.round(duration_s);
  if (whole_s < 90) return `${whole_s} s`;
  const minutes = Math.round(whole_s / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
