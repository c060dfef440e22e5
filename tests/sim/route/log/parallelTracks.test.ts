import { describe, expect, it } from "vitest";
import { readLog } from "../../../../sim/route/readLog.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const encoder = new TextEncoder();
/** Ten minutes to the north at 14 m/s from a place. */
const track = (name: string, lat_deg: number, after_s: number) => {
  const points = Array.from({ length: 600 }, (_, i) => {
    const iso = new Date((START_s + after_s + i) * 1000).toISOString();
    return `<trkpt lat="${(lat_deg + (14 * i) / 111_229).toFixed(6)}" lon="8.5"><time>${iso}</time></trkpt>`;
  });
  return `<trk>${name === "" ? "" : `<name>${name}</name>`}<trkseg>${points.join("")}</trkseg></trk>`;
};
const gpx = (...tracks: readonly string[]) => encoder.encode(`<gpx version="1.1">${tracks.join("")}</gpx>`);
const car = (file: ReturnType<typeof readLog>) => file.questions.find(({ name }) => name === "vehicle");

describe("two tracks at the same time in different places", () => {
  it.each([0, 300.5])("are two cars, and which one is asked, though the second starts %d s later", (after_s) => {
    const file = readLog("a.gpx", gpx(track("", 50, 0), track("", 51, after_s)));
    expect(car(file)).toMatchObject({ choices: ["track 1", "track 2"], guess: "track 1", decided: false });
    expect(car(file)?.evidence).toMatch(
      /^2 drives at the same time for \d+ min \d+ s, too far apart for one car: track 1 with 600 points, track 2 with 600 points$/,
    );
  });

  it("are told by their names, and the one that is chosen is read whole", () => {
    const bytes = gpx(track("van", 50, 0), track("saloon", 51, 0));
    const van = readLog("a.gpx", bytes, { vehicle: "van" });
    const saloon = readLog("a.gpx", bytes, { vehicle: "saloon" });
    expect([van, saloon].map(({ fixes }) => [fixes.count, Math.round(fixes.latitude_deg[0])])).toEqual([
      [600, 50],
      [600, 51],
    ]);
    expect(car(saloon)?.decided).toBe(true);
    expect(() => readLog("a.gpx", bytes, { vehicle: "bus" })).toThrow(/found "bus", a.gpx holds van, saloon/);
  });

  it("are one car's where they are in one place, or one after another", () => {
    expect(car(readLog("a.gpx", gpx(track("", 50, 0), track("", 50.0001, 0))))).toBeUndefined();
    expect(car(readLog("a.gpx", gpx(track("", 50, 0), track("", 51, 590))))).toBeUndefined();
  });
});
