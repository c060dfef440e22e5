import { describe, expect, it } from "vitest";
import type { LogFile, ReadLogOptions } from "../../../../sim/route/log/logFile.ts";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string, options: ReadLogOptions = {}) => readLog("log.csv", encoder.encode(text), options);
const rolesOf = (log: LogFile) => log.guess.columns.map(({ role }) => role);
const question = (log: LogFile, name: string) => log.questions.find((one) => one.name === name);

/** Sixty seconds at 20 m/s to the north, one row a second, each made by the function. */
const drive = (row: (i: number, latitude_deg: number) => string) =>
  Array.from({ length: 60 }, (_, i) => row(i, 50 + (i * 20) / 111229)).join("\n");
const clock = (i: number) => `08:12:${String(i).padStart(2, "0")}`;

describe("a table", () => {
  it("with commas and units in the header is understood without a question left open", () => {
    const log = read(
      `time,lat,lon,speed (mph),altitude (ft)\n${drive((i, lat) => `2024-05-03T${clock(i)}Z,${lat},8.5,44.7,328`)}`,
    );
    expect(log.format).toBe("table");
    expect(log.fixes.count).toBe(60);
    expect(log.fixes.speed_mps[5]).toBeCloseTo(44.7 * 0.44704, 9);
    expect(log.fixes.elevation_m[5]).toBeCloseTo(328 * 0.3048, 9);
    expect(log.questions.filter(({ decided }) => !decided)).toEqual([]);
  });

  it("with semicolons, decimal commas, a preamble, a units row and German headers is understood", () => {
    const body = drive((i, lat) => `03.05.2024 ${clock(i)};${String(lat).replace(".", ",")};8,5;72,0`);
    const log = read(`Fahrtenschreiber;Muster\nVersion;3\nZeit;Breite;Länge;Geschwindigkeit\n;°;°;km/h\n${body}`);
    expect(rolesOf(log)).toEqual(["time", "lat", "lon", "speed"]);
    expect(log.fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 0) / 1000);
    expect(log.fixes.latitude_deg[1]).toBeCloseTo(50 + 20 / 111229, 9);
    expect(log.fixes.speed_mps[3]).toBeCloseTo(20, 9);
  });

  it("in Latin-1 is read as such", () => {
    const text = `Zeit;Höhe (m);Geschwindigkeit (km/h)\n${drive((i) => `${i};100;36`)}`;
    const bytes = Uint8Array.from([...text].map((letter) => letter.charCodeAt(0)));
    const log = readLog("log.csv", bytes);
    expect(log.guess.encoding).toBe("windows-1252");
    expect(rolesOf(log)).toEqual(["time", "height", "speed"]);
  });

  it("in UTF-16 is read as such", () => {
    const text = `time_s\tspeed_kmh\textra\n${drive((i) => `${i}\t36\t1`)}`;
    const bytes = Uint8Array.from([0xff, 0xfe, ...[...text].flatMap((letter) => [letter.charCodeAt(0), 0])]);
    const log = readLog("log.csv", bytes);
    expect(log.guess.encoding).toBe("utf-16le");
    expect(log.fixes.speed_mps[0]).toBeCloseTo(10, 9);
  });

  it("without a header is understood by its values, and the unit by the positions", () => {
    const log = read(drive((i, lat) => `${1714723200 + i},${lat.toFixed(6)},8.500000,${70 + (i % 5)}`));
    expect(rolesOf(log)).toEqual(["time", "lat", "lon", "speed"]);
    expect(question(log, "speedUnit")).toMatchObject({ guess: "kmh", decided: true });
    expect(log.fixes.speed_mps[7]).toBeCloseTo(20, 9);
  });

  it.each([
    ["kmh", 72],
    ["mph", 20 / 0.44704],
    ["mps", 20],
    ["knots", (20 * 3600) / 1852],
  ] as const)("whose speed is in %s without saying so is found out by the positions", (unit, value) => {
    const log = read(`time,lat,lon,speed\n${drive((i, lat) => `${i},${lat},8.5,${value}`)}`);
    expect(question(log, "speedUnit")).toMatchObject({ guess: unit, decided: true });
    expect(log.fixes.speed_mps[9]).toBeCloseTo(20, 6);
  });

  it("of speeds alone without a unit asks, and takes the answer", () => {
    const text = `time,speed\n${drive((i) => `${i},${20 + (i % 5)}`)}`;
    expect(question(read(text), "speedUnit")).toMatchObject({ option: "--speed-unit", decided: false });
    const log = read(text, { speedUnit: "mph" });
    expect(question(log, "speedUnit")).toMatchObject({ decided: true });
    expect(log.fixes.speed_mps[0]).toBeCloseTo(20 * 0.44704, 9);
  });

  it("without times asks for the interval, and takes the answer", () => {
    const text = `speed_kmh\n${drive((i) => String(20 + i))}`;
    expect(question(read(text), "interval")).toMatchObject({ option: "--interval", decided: false });
    const log = read(text, { interval_s: 0.5 });
    expect(log.fixes.time_s[2]).toBe(1);
    expect(question(log, "interval")).toMatchObject({ decided: true });
  });

  it("with degrees and minutes and no hemisphere asks, and takes the answer", () => {
    const text = `time,latitude,longitude,speed_kmh\n${drive((i) => `${i},5206.${String(i).padStart(3, "0")},00830.500,36`)}`;
    expect(question(read(text), "hemisphere")).toMatchObject({ option: "--hemisphere", decided: false });
    const log = read(text, { hemisphere: "SW" });
    expect(log.fixes.latitude_deg[0]).toBeCloseTo(-52.1, 9);
    expect(log.fixes.longitude_deg[0]).toBeCloseTo(-(8 + 30.5 / 60), 9);
  });

  it("takes hemispheres from columns of letters", () => {
    const log = read(`time,latitude,ns,longitude,ew,speed_kmh\n${drive((i, lat) => `${i},${lat},S,8.5,W,36`)}`);
    expect(log.fixes.latitude_deg[0]).toBeCloseTo(-50, 9);
    expect(log.fixes.longitude_deg[0]).toBeCloseTo(-8.5, 9);
    expect(question(log, "hemisphere")).toMatchObject({ decided: true });
  });

  it.each([
    ["epoch in ms", (i: number) => String(1714723200000 + i * 1000), Date.UTC(2024, 4, 3, 8) / 1000],
    ["epoch in us", (i: number) => String(1714723200000000 + i * 1e6), Date.UTC(2024, 4, 3, 8) / 1000],
    ["month first", (i: number) => `05/13/2024 ${clock(i)}`, Date.UTC(2024, 4, 13, 8, 12) / 1000],
    ["with a zone", (i: number) => `2024-05-03T${clock(i)}+02:00`, Date.UTC(2024, 4, 3, 6, 12) / 1000],
    ["with the month's name", (i: number) => `03-May-2024 ${clock(i)}.000`, Date.UTC(2024, 4, 3, 8, 12) / 1000],
    [
      "as telephones print it",
      (i: number) => `Fri May 03 ${clock(i)} GMT+02:00 2024`,
      Date.UTC(2024, 4, 3, 6, 12) / 1000,
    ],
    ["elapsed in ms", (i: number) => String(i * 1000), 0],
  ])("reads time %s", (_, time, start_s) => {
    const log = read(`time,speed_kmh\n${drive((i) => `${time(i)},36`)}`);
    expect(log.fixes.time_s[0]).toBe(start_s);
    expect(log.fixes.time_s[59] - log.fixes.time_s[0]).toBe(59);
  });

  it("with a clock and no date asks for it, unless the file's name holds one", () => {
    const text = `time,speed_kmh\n${drive((i) => `${clock(i)},36`)}`;
    expect(question(read(text), "date")).toMatchObject({ option: "--date", decided: false });
    const named = readLog("drive-2024-05-03.csv", encoder.encode(text));
    expect(question(named, "date")).toMatchObject({ decided: true, evidence: "the file's name" });
    expect(named.fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 0) / 1000);
  });

  it("whose clock passes midnight goes on", () => {
    const log = read("time,speed_kmh\n23:59:58,36\n23:59:59,36\n00:00:00,36\n00:00:01,36\n00:00:02,36\n", {
      date: "2024-05-03",
    });
    expect(log.fixes.time_s[4] - log.fixes.time_s[0]).toBe(4);
  });

  it("keeps volts, amps, motor speed and temperature in SI, amps positive where they leave the pack", () => {
    const log = read(
      `time_s,speed_kmh,pack volts (V),pack current (A),rpm,motor temp (°C)\n${drive((i) => `${i},50,96.5,-80,3000,41`)}`,
    );
    const { packVoltage_V, packCurrent_A, motorSpeed_radps, temperature_K } = log.fixes.extras;
    expect(packVoltage_V?.[0]).toBe(96.5);
    expect(packCurrent_A?.[0]).toBe(80);
    expect(motorSpeed_radps?.[0]).toBeCloseTo(100 * Math.PI, 9);
    expect(temperature_K?.[0]).toBeCloseTo(314.15, 9);
    expect(question(log, "currentSign")).toMatchObject({ guess: "-1", decided: true });
  });

  it("with one value a row becomes one fix for each reading of the position", () => {
    const rows = drive(
      (i, lat) =>
        `${i};GPS latitude;${lat};°\n${i + 0.1};GPS longitude;8.5;°\n${i + 0.2};Speed;72;km/h\n${i + 0.3};RPM;2000;rpm`,
    );
    const log = read(`seconds;PID;value;units\n${rows}`);
    expect(log.fixes.count).toBe(60);
    expect(log.fixes.latitude_deg[1]).toBeCloseTo(50 + 20 / 111229, 9);
    expect(log.fixes.speed_mps[1]).toBeCloseTo(20, 9);
    expect(log.fixes.extras.motorSpeed_radps?.[1]).toBeCloseTo((2000 * 2 * Math.PI) / 60, 9);
  });

  it("leaves out lines it cannot read, with their numbers", () => {
    const log = read(`time_s,speed_kmh\n0,36\n1,36\nERROR,lost\n3,36\n4,36\n5,36\n`);
    expect(log.fixes.count).toBe(5);
    expect(log.badLines).toBe(1);
    expect(log.problems[0].where).toBe("log.csv line 4");
    expect(log.fixes.line[2]).toBe(5);
  });

  it("lets a person choose another column", () => {
    const text = `time_s,speed dashboard (km/h),speed gps (km/h)\n${drive((i) => `${i},40,36`)}`;
    expect(read(text).fixes.speed_mps[0]).toBeCloseTo(10, 9);
    expect(read(text, { columns: { speed: 1 } }).fixes.speed_mps[0]).toBeCloseTo(40 / 3.6, 9);
  });

  it("of other things is refused with what was found", () => {
    expect(() => read("name,age\nAnna,31\nBert,44\nCarl,52\nDora,28\n")).toThrow(/name, age|without a table/);
  });
});
