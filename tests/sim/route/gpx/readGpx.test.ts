import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string) => readLog("a.gpx", encoder.encode(text));
const wrap = (inside: string, head = '<gpx version="1.1" creator="invented">') =>
  `<?xml version="1.0"?>\n${head}\n${inside}\n</gpx>`;
const point = (lat: number, time: string, inside = "") =>
  `<trkpt lat="${lat}" lon="8.5"><time>${time}</time>${inside}</trkpt>`;

describe("a GPX log", () => {
  it("gives time, position, height and the speed of version 1.0 or of any extension", () => {
    const text = wrap(
      `<trk><trkseg><trkpt lat="52.1" lon="-8.5"><ele>101.5</ele><time>2024-05-03T08:12:05Z</time><speed>12.5</speed></trkpt>
       <trkpt lat="52.2" lon="-8.5"><time>2024-05-03T08:12:06Z</time><extensions><q:Ext xmlns:q="u"><q:speed>13</q:speed></q:Ext></extensions></trkpt></trkseg></trk>`,
    );
    const { fixes, format, badLines } = read(text);
    expect(format).toBe("gpx");
    expect(badLines).toBe(0);
    expect(fixes.count).toBe(2);
    expect(fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 5) / 1000);
    expect([...fixes.latitude_deg]).toEqual([52.1, 52.2]);
    expect(fixes.longitude_deg[0]).toBe(-8.5);
    expect(fixes.elevation_m[0]).toBe(101.5);
    expect(fixes.elevation_m[1]).toBeNaN();
    expect([...fixes.speed_mps]).toEqual([12.5, 13]);
  });

  it("is read whatever prefix its elements carry", () => {
    const text =
      '<g:gpx xmlns:g="u"><g:trk><g:trkseg><g:trkpt lat="1" lon="2"><g:time>2024-05-03T08:12:05Z</g:time></g:trkpt></g:trkseg></g:trk></g:gpx>';
    expect(read(text).fixes.count).toBe(1);
  });

  it.each([
    ["2024-05-03T08:12:05Z", 5],
    ["2024-05-03T10:12:05+02:00", 5],
    ["2024-05-03T08:12:05.250Z", 5.25],
    ["2024-5-3T8:12:5Z", 5],
    ["2024-05-03 08:12:05", 5],
  ])("reads the time %s", (text, second) => {
    const { fixes } = read(wrap(`<trk><trkseg>${point(1, text)}</trkseg></trk>`));
    expect(fixes.time_s[0]).toBeCloseTo(Date.UTC(2024, 4, 3, 8, 12, 0) / 1000 + second, 6);
  });

  it("says which times had no zone and reads them as UTC", () => {
    const log = read(wrap(`<trk><trkseg>${point(1, "2024-05-03T08:12:05")}</trkseg></trk>`));
    expect(log.hasZone).toBe(false);
    expect(log.problems.map(({ code }) => code)).toContain("timesWithoutZone");
  });

  it("takes heights that are all zero as not recorded", () => {
    const zero = (lat: number, s: number) => point(lat, `2024-05-03T08:12:0${s}Z`, "<ele>0</ele>");
    const log = read(wrap(`<trk><trkseg>${zero(1, 1)}${zero(1.0001, 2)}</trkseg></trk>`));
    expect([...log.fixes.elevation_m].every(Number.isNaN)).toBe(true);
    expect(log.problems.map(({ code }) => code)).toContain("zeroHeights");
  });

  it("numbers segments, so that a break of the record is known", () => {
    const seg = (s: number) => `<trkseg>${point(1, `2024-05-03T08:12:0${s}Z`)}</trkseg>`;
    const { fixes } = read(wrap(`<trk>${seg(1)}${seg(2)}</trk>`));
    expect(fixes.segment[0]).not.toBe(fixes.segment[1]);
  });

  it("leaves out positions that are none, with their line", () => {
    const log = read(
      wrap(
        `<trk><trkseg>\n<trkpt lat="99" lon="8"/>\n<trkpt lat="x" lon="8"/>\n${point(1, "2024-05-03T08:12:05Z")}</trkseg></trk>`,
      ),
    );
    expect(log.fixes.count).toBe(1);
    expect(log.badLines).toBe(2);
    expect(log.problems[0]).toMatchObject({ code: "badPosition", where: "a.gpx line 4" });
  });

  it("cut in half keeps every whole point and says so", () => {
    const whole = wrap(
      `<trk><trkseg>${point(1, "2024-05-03T08:12:05Z")}${point(2, "2024-05-03T08:12:06Z")}</trkseg></trk>`,
    );
    const log = read(whole.slice(0, whole.lastIndexOf("<time>") + 8));
    expect(log.fixes.count).toBe(1);
    expect(log.problems.map(({ code }) => code)).toContain("cutFile");
  });

  it("with a bare ampersand and a stray tag loses no point", () => {
    const text = wrap(
      `<trk><name>A & B</name><trkseg>${point(1, "2024-05-03T08:12:05Z")}</oops>${point(2, "2024-05-03T08:12:06Z")}</trkseg></trk>`,
    );
    const log = read(text);
    expect(log.fixes.count).toBe(2);
    expect(log.problems.some(({ code }) => code === "brokenXml")).toBe(true);
  });

  it("that declares entities is refused, and nothing is expanded or fetched", () => {
    const bombs = [
      '<!DOCTYPE gpx [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>',
      '<!DOCTYPE gpx [<!ENTITY x SYSTEM "file:///etc/passwd">]>',
    ];
    for (const bomb of bombs) {
      const text = `<?xml version="1.0"?>${bomb}<gpx><trk><trkseg>${point(1, "2024-05-03T08:12:05Z", "<name>&b;</name>")}</trkseg></trk></gpx>`;
      expect(() => read(text)).toThrow(InputError);
      expect(() => read(text)).toThrow(/entities/);
    }
  });

  it("that declares entities behind 100 kB of blanks is refused as well", () => {
    const text = `<?xml version="1.0"?>${" ".repeat(100_000)}<!DOCTYPE gpx [<!ENTITY a "aaaa">]><gpx><trk/></gpx>`;
    expect(() => read(text)).toThrow(InputError);
  });

  it("without times is called a planned route and asks for speeds", () => {
    const log = read(wrap('<rte><rtept lat="1" lon="2"/><rtept lat="1.01" lon="2"/></rte>'));
    expect(log.hasTimes).toBe(false);
    expect(log.fixes.count).toBe(2);
    expect(log.problems.map(({ code }) => code)).toContain("noTimes");
    expect(log.questions).toContainEqual(expect.objectContaining({ name: "speeds", decided: false }));
  });

  it("without times takes those of an interval that is given", () => {
    const text = wrap('<rte><rtept lat="1" lon="2"/><rtept lat="1.001" lon="2"/></rte>');
    const log = readLog("a.gpx", encoder.encode(text), { interval_s: 5, date: "2024-05-03" });
    expect(log.hasTimes).toBe(true);
    expect(log.fixes.time_s[1] - log.fixes.time_s[0]).toBe(5);
  });

  it("whose speeds are really km/h is found out by its positions", () => {
    // 20 m/s to the north, written as 72
    const points = Array.from({ length: 60 }, (_, i) =>
      point(50 + (i * 20) / 111229, `2024-05-03T08:12:${String(i).padStart(2, "0")}Z`, "<speed>72</speed>"),
    );
    const log = read(wrap(`<trk><trkseg>${points.join("")}</trkseg></trk>`));
    expect(log.fixes.speed_mps[10]).toBeCloseTo(20, 6);
    expect(log.questions[0]).toMatchObject({ name: "speedUnit", guess: "kmh", decided: true });
  });
});
