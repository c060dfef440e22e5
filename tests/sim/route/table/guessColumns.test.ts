import { describe, expect, it } from "vitest";
import type { LogFile } from "../../../../sim/route/log/logFile.ts";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string) => readLog("log.csv", encoder.encode(text));
const rolesOf = (log: LogFile) => log.guess.columns.map(({ role }) => role);
const question = (log: LogFile, name: string) => log.questions.find((one) => one.name === name);
const two = (value: number) => String(value).padStart(2, "0");
/** From 08:10:00 on. */
const clock = (i: number, sign = ":") => ["08", two(10 + Math.floor(i / 60)), two(i % 60)].join(sign);
const start_s = Date.UTC(2024, 4, 3, 8, 10) / 1000;
/** Two minutes at 20 m/s to the north, one row a second. */
const rows = (row: (i: number, latitude_deg: string) => string) =>
  Array.from({ length: 120 }, (_, i) => row(i, (50 + (i * 20) / 111229).toFixed(6))).join("\n");
const elapsed_s = (log: LogFile) => log.fixes.time_s[119] - log.fixes.time_s[0];

describe("the column of times", () => {
  it.each(["elapsed", "Elapsed time (sec)", "duration", "Sekunden", "Time since start", "temps", "Temps écoulé (s)"])(
    "is known by the header %s",
    (header) => {
      const log = read(`${header};speed (km/h)\n${rows((i) => `${2 * i};36`)}`);
      expect(rolesOf(log)).toEqual(["time", "speed"]);
      expect(elapsed_s(log)).toBe(238);
    },
  );

  it("is no row counter: the clock beside it is, or a question is asked", () => {
    const beside = read(rows((i, lat) => `${i + 1},${clock(3 * i)},${lat},8.500000,${70 + (i % 5)}`));
    expect(rolesOf(beside)).toEqual(["none", "time", "lat", "lon", "speed"]);
    expect(elapsed_s(beside)).toBe(357);
    const alone = read(rows((i, lat) => `${i + 1},${lat},8.500000,${70 + (i % 5)}`));
    expect(rolesOf(alone)).toEqual(["none", "lat", "lon", "speed"]);
    expect(question(alone, "interval")).toMatchObject({
      decided: false,
      evidence: "column 1, which counts by one from row to row: a row number or seconds",
    });
  });

  it("is the one that tells rows apart, before a clock of whole minutes", () => {
    const log = read(`Time,Epoch,Speed (km/h)\n${rows((i) => `2024-05-03 ${clock(i).slice(0, 5)},${start_s + i},36`)}`);
    expect(rolesOf(log)).toEqual(["none", "time", "speed"]);
    expect(elapsed_s(log)).toBe(119);
  });

  it.each([
    ["a colon before the hundredths", (i: number) => `${clock(i)}:50`],
    ["no signs between its parts", (i: number) => `${clock(i, "")}.50`],
    ["no signs and hundredths", (i: number) => `${clock(i, "")}50`],
  ])("may be a clock with %s", (_, time) => {
    const log = read(`time,speed_kmh\n${rows((i) => `${time(i)},36`)}`);
    expect(log.fixes.time_s[0]).toBeCloseTo(8 * 3600 + 600.5, 9);
    expect(elapsed_s(log)).toBeCloseTo(119, 9);
  });

  it.each([".", ","])("may be a spreadsheet's count of days, with the decimal sign %s", (sign) => {
    // Day 45415 is 2024-05-03 in the count of days that spreadsheets begin at 1900.
    const day = (i: number) => (45415 + (8 * 3600 + 600 + i) / 86400).toFixed(8).replace(".", sign);
    const log = read(`Zeit;Geschwindigkeit km/h\n${rows((i) => `${day(i)};36`)}`);
    expect(log.fixes.time_s[0]).toBeCloseTo(start_s, 2);
    expect(elapsed_s(log)).toBeCloseTo(119, 2);
  });

  it("that cannot be read is quoted, not denied", () => {
    const log = read(`time,lat,lon,speed_kmh\n${rows((_, lat) => `08:12:00,${lat},8.5,36`)}`);
    expect(question(log, "interval")?.evidence).toContain('"08:12:00" in the column "time"');
  });
});

describe("other columns", () => {
  it.each([
    ["Zeitstempel", "time"],
    ["Elv", "height"],
    ["Motortemperatur", "temperature"],
  ])("named %s hold the %s", (header, role) => {
    const log = read(`time,speed_kmh,${header}\n${rows((i) => `${clock(i)},36,${role === "time" ? "x" : 41}`)}`);
    const own = read(`${header},speed_kmh\n${rows((i) => `${role === "time" ? clock(i) : 41},36`)}`);
    expect([rolesOf(log)[2], rolesOf(own)[0]]).toContain(role);
    expect([rolesOf(log)[2], rolesOf(own)[0]]).not.toContain(role === "temperature" ? "time" : "temperature");
  });

  it.each(["Battery voltage (V)", "12 V battery (V)", "Bordspannung (V)"])(
    "of a 12 V system are not the pack's: %s",
    (header) => {
      const log = read(`time,speed_kmh,${header}\n${rows((i) => `${clock(i)},36,13.${i % 9}`)}`);
      expect(log.fixes.extras.packVoltage_V).toBeUndefined();
    },
  );

  it.each(["EGR solenoid current (A)", "Phase current (A)", "fuel pump (A)"])(
    "of another current are not the pack's: %s",
    (header) => {
      const log = read(`time,speed_kmh,${header}\n${rows((i) => `${clock(i)},36,0.${i % 9}`)}`);
      expect(log.fixes.extras.packCurrent_A).toBeUndefined();
    },
  );

  it.each(["Batteriespannung (V)", "Voltage", "hvVoltage_V", "DC bus volts"])("of the pack are: %s", (header) => {
    const log = read(`time;speed_kmh;${header}\n${rows((i) => `${clock(i)};36;96.${i % 9}`)}`);
    expect(log.fixes.extras.packVoltage_V?.[3]).toBeCloseTo(96.3, 9);
  });

  it("state their unit in each cell too", () => {
    const log = read(`time;speed;alt\n${rows((i) => `${clock(i)};13,${i % 9} m/s;328 ft`)}`);
    expect(log.fixes.speed_mps[4]).toBeCloseTo(13.4, 9);
    expect(log.fixes.elevation_m[4]).toBeCloseTo(328 * 0.3048, 9);
    expect(question(log, "speedUnit")).toMatchObject({ guess: "mps", decided: true });
  });
});

describe("a longitude", () => {
  it.each(["-3 51.2", "\u22123 51.2", "- 3 51.2", "3 51.2 W"])("written %s is west, and is called so", (lon) => {
    const log = read(`time;lat;lon;speed_kmh\n${rows((i) => `${clock(i)};52 ${(7 + i / 100).toFixed(3)};${lon};36`)}`);
    expect(log.fixes.longitude_deg[0]).toBeCloseTo(-(3 + 51.2 / 60), 9);
    expect(question(log, "hemisphere")).toMatchObject({ guess: "NW", decided: true });
  });
});

describe("two cars in one table", () => {
  const text = `time,vehicle,lat,lon,speed_kmh\n${rows((i, lat) =>
    i < 100 ? `${clock(i)},van,${lat},8.5,72\n${clock(i)},pick-up,${lat},9.5,36` : `${clock(i)},van,${lat},8.5,72`,
  )}`;

  it("are asked about, with the longer one as the guess", () => {
    const log = read(text);
    expect(question(log, "vehicle")).toMatchObject({
      option: "--vehicle",
      choices: ["van", "pick-up"],
      guess: "van",
      decided: false,
      evidence: "2 cars in one file, van with 120 rows, pick-up with 100 rows",
    });
    expect(log.fixes.count).toBe(120);
  });

  it("give the one chosen, whole", () => {
    const log = readLog("log.csv", encoder.encode(text), { vehicle: "pick-up" });
    expect(log.fixes.count).toBe(100);
    expect(new Set(log.fixes.longitude_deg)).toEqual(new Set([9.5]));
    expect(new Set(log.fixes.speed_mps)).toEqual(new Set([10]));
    expect(() => readLog("log.csv", encoder.encode(text), { vehicle: "bus" })).toThrow(
      'found "bus", log.csv holds van',
    );
  });

  it("are no question where the column names one", () => {
    const log = read(`time,vehicle,speed_kmh\n${rows((i) => `${clock(i)},van,72`)}`);
    expect(question(log, "vehicle")).toBeUndefined();
    expect(log.fixes.count).toBe(120);
  });
});

it("says that positions are there, but too few to tell the unit of speed by", () => {
  const place = (i: number, lat: string) => (i < 20 ? `${lat},8.5` : ",");
  const log = read(`time,lat,lon,speed\n${rows((i, lat) => `${clock(i)},${place(i, lat)},${20 + (i % 3)}`)}`);
  expect(question(log, "speedUnit")?.evidence).toContain("too few rows with speed and position");
});
