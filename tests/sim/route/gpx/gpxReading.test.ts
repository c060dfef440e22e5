import { expect, it } from "vitest";
import { GpxReading } from "../../../../sim/route/gpx/gpxReading.ts";

/** Hands a reading one point with the texts of its elements. */
function point(reading: GpxReading, name: string, lat: string, texts: Readonly<Record<string, string>> = {}) {
  reading.open(name, { lat, lon: "8" }, 3);
  for (const [element, text] of Object.entries(texts)) {
    reading.open(element, {}, 3);
    reading.text(text);
    reading.close(element);
  }
  reading.close(name);
}

it("gathers what a point has", () => {
  const reading = new GpxReading("a.gpx");
  reading.open("trk", {}, 1);
  reading.open("trkseg", {}, 2);
  point(reading, "trkpt", "50", { ele: " 120.5 ", time: "2024-05-03T08:00:00Z", speed: "12", hdop: "2" });
  const { fixes } = reading.finish("utf-8");
  expect(fixes).toMatchObject({ count: 1 });
  expect([fixes.latitude_deg[0], fixes.elevation_m[0], fixes.speed_mps[0], fixes.accuracy_m[0]]).toEqual([
    50, 120.5, 12, 6,
  ]);
});

it("knows which track each segment is of", () => {
  const reading = new GpxReading("a.gpx");
  for (const car of ["Van", "Saloon"]) {
    reading.open("trk", {}, 1);
    reading.open("name", {}, 1);
    reading.text(car);
    reading.close("name");
    reading.open("trkseg", {}, 1);
    point(reading, "trkpt", "50");
  }
  const { fixes, trackNames } = reading.finish("utf-8");
  expect([...fixes.segment].map((segment) => trackNames?.[segment])).toEqual(["Van", "Saloon"]);
});

it("takes a route only where there is no track", () => {
  const reading = new GpxReading("a.gpx");
  point(reading, "rtept", "49");
  expect(reading.finish("utf-8").guess.layout[0]).toBe("GPX, 1 route point");
  point(reading, "trkpt", "50");
  expect([...reading.finish("utf-8").fixes.latitude_deg]).toEqual([50]);
});

it("leaves out a point without a place and one that the end cuts in half, and says so", () => {
  const reading = new GpxReading("a.gpx");
  point(reading, "trkpt", "95");
  reading.open("trkpt", { lat: "50", lon: "8" }, 7);
  reading.end(2, 7);
  const codes = reading.problems.finish().map(({ code, where }) => [code, where]);
  expect(codes).toEqual([
    ["badPosition", "a.gpx line 3"],
    ["cutFile", "a.gpx line 7"],
  ]);
});
