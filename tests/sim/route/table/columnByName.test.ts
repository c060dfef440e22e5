import { expect, it } from "vitest";
import { columnByName } from "../../../../sim/route/table/columnByName.ts";

it.each([
  ["Speed (km/h)", "speed", "kmh"],
  ["GPS latitude", "lat", ""],
  ["Längengrad", "lon", ""],
  ["Höhe [m]", "height", "m"],
  ["Zeitstempel", "time", ""],
  ["Pack voltage (V)", "packVoltage", "V"],
  ["Battery current A", "packCurrent", "A"],
  ["Drehzahl", "motorSpeed", ""],
  ["Kennzeichen", "vehicle", ""],
  ["km/h", "speed", "kmh"],
])("%s holds %s", (header, role, unit) => {
  expect(columnByName(header)).toEqual({ role, unit });
});

it.each(["Wind speed", "Cell voltage max", "12 V current", "Time zone", "Satellites", "vertical speed (m/s)"])(
  "%s is something beside that",
  (header) => {
    expect(columnByName(header).role).toBe("none");
  },
);
