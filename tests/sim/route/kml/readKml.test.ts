import { expect, it } from "vitest";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string) => readLog("drive.kml", encoder.encode(text));
const wrap = (inside: string) =>
  `<?xml version="1.0"?>\n<kml xmlns="u" xmlns:gx="v"><Document>${inside}</Document></kml>`;
const when = (s: number) => `<when>2024-05-03T08:12:0${s}Z</when>`;
const start_s = Date.UTC(2024, 4, 3, 8, 12) / 1000;

it("gives the times and positions of a track, the first with the first", () => {
  const coord = (lat_deg: number) => `<gx:coord>-8.5 ${lat_deg} 101.5</gx:coord>`;
  const track = `<Placemark><gx:Track>${when(1)}${when(2)}${coord(52.1)}${coord(52.2)}${coord(52.3)}</gx:Track></Placemark>`;
  const log = read(wrap(track));
  expect(log.format).toBe("kml");
  expect([...log.fixes.time_s]).toEqual([start_s + 1, start_s + 2]);
  expect([...log.fixes.latitude_deg]).toEqual([52.1, 52.2]);
  expect([...log.fixes.longitude_deg]).toEqual([-8.5, -8.5]);
  expect(log.fixes.elevation_m[0]).toBe(101.5);
  expect(log.problems.map(({ message }) => message)).toEqual(["found 1 of 3 positions without a time, left out"]);
});

it("gives the placemarks that have a time", () => {
  const mark = (s: number, lat_deg: number) =>
    `<Placemark><TimeStamp>${when(s)}</TimeStamp><Point><coordinates>-8.5,${lat_deg},9</coordinates></Point></Placemark>`;
  const log = read(wrap(mark(1, 52.1) + mark(2, 52.2)));
  expect([...log.fixes.latitude_deg]).toEqual([52.1, 52.2]);
  expect(log.hasTimes).toBe(true);
});

it("takes a line without times for a planned route", () => {
  const log = read(
    wrap(
      "<Placemark><LineString><coordinates>\n8.5,52.1,10 8.5,52.2,20\n 8.5,99,0</coordinates></LineString></Placemark>",
    ),
  );
  expect(log.hasTimes).toBe(false);
  expect([...log.fixes.latitude_deg]).toEqual([52.1, 52.2]);
  expect(log.badLines).toBe(1);
});

it("says that a map without tracks has no positions", () => {
  expect(() => read(wrap("<Folder><name>x</name></Folder>"))).toThrow(
    "found no recorded positions and no speeds in it",
  );
});
