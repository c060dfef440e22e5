import { describe, expect, it } from "vitest";
import { FixBuilder } from "../../../../sim/route/log/fixBuilder.ts";
import { emptyFix } from "../../../../sim/route/log/fixes.ts";
import { ProblemList } from "../../../../sim/route/log/problemList.ts";
import { finishXml, numberIn, XmlTimes } from "../../../../sim/route/log/xmlFixes.ts";

const words = {
  format: "GPX",
  point: "track point",
  columns: { lat: "lat", lon: "lon", time: "time", height: "ele", speed: "speed" },
};

/** Points with such heights and times. */
function finished(heights_m: readonly number[], times: readonly string[]) {
  const problems = new ProblemList("a.gpx");
  const reading = new XmlTimes(problems);
  const builder = new FixBuilder();
  heights_m.forEach((elevation_m, i) => {
    const point = { ...emptyFix(i + 1, 0), elevation_m };
    reading.take(point, times[i]);
    builder.add(point);
  });
  return finishXml(builder, problems, reading, "utf-8", words);
}

describe("times", () => {
  it("are in UTC whatever zone they are written in, which the commonest says", () => {
    const zones = ["+02:00", "+02:00", "Z"].map((zone, i) => `2024-05-03T08:00:0${i}${zone}`);
    const { fixes, utcOffset_s, hasZone } = finished([1, 2, 3], zones);
    expect(fixes.time_s[1] - fixes.time_s[0]).toBe(1);
    expect(fixes.time_s[2] - fixes.time_s[1]).toBe(7201);
    expect({ utcOffset_s, hasZone }).toEqual({ utcOffset_s: 7200, hasZone: true });
  });
  it("without a zone are UTC, and that is said", () => {
    const { hasZone, problems } = finished([1], ["2024-05-03T08:00:00"]);
    expect(hasZone).toBe(false);
    expect(problems[0].message).toMatch(/^found 1 time without a zone, read as UTC/);
  });
  it("that are none are said with what stands there", () => {
    const { hasTimes, problems, badLines } = finished([1], ["noon"]);
    expect(hasTimes).toBe(false);
    expect(problems[0]).toMatchObject({ code: "badTime", where: "a.gpx line 1" });
    expect(badLines).toBe(1);
  });
});

it("takes heights that are all 0 m as not recorded, and says of the file only what it has", () => {
  const times = ["2024-05-03T08:00:00Z", "2024-05-03T08:00:01Z"];
  const flat = finished([0, 0], times);
  expect(flat.fixes.elevation_m[0]).toBeNaN();
  expect(flat.guess.layout).toEqual(["GPX, 2 track points", "times in UTC, no heights, no recorded speed"]);
  expect(flat.guess.columns.map(({ role }) => role)).toEqual(["lat", "lon", "time"]);
  expect(finished([0, 1], times).fixes.elevation_m[0]).toBe(0);
});

it("has no number where none is written, or one out of bounds", () => {
  expect(numberIn("12.5", [0, 100])).toBe(12.5);
  for (const text of [undefined, " ", "x", "101"]) expect(numberIn(text, [0, 100])).toBeNaN();
});
