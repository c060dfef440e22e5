import { expect, it } from "vitest";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string) => readLog("ride.tcx", encoder.encode(text));
const time = (s: number) => `<Time>2024-05-03T08:12:${String(s).padStart(2, "0")}.000Z</Time>`;
const place = (lat_deg: number) =>
  `<Position><LatitudeDegrees>${lat_deg}</LatitudeDegrees><LongitudeDegrees>-8.5</LongitudeDegrees></Position>`;
const speed = (mps: number) => `<Extensions><x:TPX xmlns:x="u"><x:Speed>${mps}</x:Speed></x:TPX></Extensions>`;
const point = (s: number, inside: string) => `<Trackpoint>${time(s)}${inside}</Trackpoint>`;
const wrap = (...laps: string[]) =>
  `<?xml version="1.0"?>\n<TrainingCenterDatabase><Activities><Activity Sport="Other">${laps
    .map((lap) => `<Lap><MaximumSpeed>99</MaximumSpeed>${lap}</Lap>`)
    .join("")}</Activity></Activities></TrainingCenterDatabase>`;

it("gives time, position, height and speed of a TCX file", () => {
  const inside = `${place(52.1)}<AltitudeMeters>101.5</AltitudeMeters>${speed(12.5)}`;
  const { format, fixes, hasZone, guess } = read(wrap(`<Track>${point(5, inside)}${point(6, place(52.2))}</Track>`));
  expect(format).toBe("tcx");
  expect(hasZone).toBe(true);
  expect([...fixes.latitude_deg]).toEqual([52.1, 52.2]);
  expect(fixes.longitude_deg[0]).toBe(-8.5);
  expect(fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 5) / 1000);
  expect(fixes.elevation_m[0]).toBe(101.5);
  expect([...fixes.speed_mps]).toEqual([12.5, Number.NaN]);
  expect(guess.layout[0]).toBe("TCX, 2 track points");
});

it("takes a new lap as one record, and a second track within a lap as a pause", () => {
  const track = (s: number) => `<Track>${point(s, place(52))}</Track>`;
  expect([...read(wrap(track(1) + track(2), track(3))).fixes.segment]).toEqual([1, 2, 2]);
});

it("leaves out what has neither a position nor a speed, and what the end of the file cuts in half", () => {
  const whole = wrap(`<Track>${point(1, place(52))}${point(2, "")}${point(3, place(52))}</Track>`);
  const log = read(whole.slice(0, whole.lastIndexOf("</LongitudeDegrees>")));
  expect(log.fixes.count).toBe(1);
  expect(log.badLines).toBe(1);
  expect(log.problems.map(({ code }) => code)).toEqual(["badPosition", "cutFile"]);
});
