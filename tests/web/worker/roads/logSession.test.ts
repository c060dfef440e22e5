import { beforeAll, describe, expect, it } from "vitest";
import { Road } from "../../../../shared/job/schema/road.ts";
import { openMeasuring, openRoutes } from "../../../../sim/index.ts";
import { createLogSession } from "../../../../web/worker/roads/logSession.ts";
import type { Answer, Brought, Drive, LogSetting, RoadsApi } from "../../../../web/worker/roads/roadsApi.ts";
import { amongHouses, type LogRow, makeLog, makeTruth, type Spoiling, withParking } from "../../../logs/logMaker.ts";
import { writeCsv, writeGpx, writeNmea } from "../../../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

const spoiling: Spoiling = { ...amongHouses, seed: 5 };
const truth = makeTruth(withParking(cycleSpeeds_mps("wltc-class-2"), 300), 3, (d) => 100 + 30 * Math.sin(d / 900));
const truth_m = truth.distance_m[truth.distance_m.length - 1];
const rows = makeLog(truth, spoiling);
const week = [0, 1, 2].flatMap((day): LogRow[] =>
  makeLog(truth, { ...spoiling, seed: 40 + day }, 1714723200 + day * 86_400),
);
const setting: LogSetting = { answers: [], off: [], parkedLonger_s: 180, utcOffset_s: 0 };
const quiet = () => {};

function file(name: string, content: Uint8Array | string): File {
  return new File([content as BlobPart], name);
}

function value<T>(answer: Answer<T>): T {
  if (answer.kind !== "done") throw new Error(`expected an answer, got ${JSON.stringify(answer)}`);
  return answer.value;
}

function driveIn(brought: Brought): Drive {
  if (brought.outcome.kind !== "drive") throw new Error(`expected a drive, got ${JSON.stringify(brought.outcome)}`);
  return brought.outcome;
}

function messages(answer: Answer<unknown>): string {
  return answer.kind === "refused"
    ? answer.problems.map(({ where, message }) => `${where}: ${message}`).join("; ")
    : "";
}

let session: Omit<RoadsApi, "job">;
beforeAll(() => {
  session = createLogSession(
    openRoutes,
    async (cycle) => ({ [cycle.split(":")[0]]: cycleTexts[cycle.split(":")[0]] }),
    openMeasuring,
  );
});

describe("a log brought to the session", () => {
  it("is said to have speeds where it has them, whether or not their unit is asked for", async () => {
    const bare = rows.map((row) => ({ ...row, speed_mps: Number.NaN }));
    const files = [file("a.nmea", writeNmea(rows)), file("b.gpx", writeGpx(bare))];
    const { files: read } = value(await session.bring(files, setting, quiet));
    expect(read.map(({ hasSpeeds }) => hasSpeeds)).toEqual([true, false]);
  });

  it("becomes a drive of the true length, told while it works", async () => {
    const told: string[] = [];
    const brought = value(
      await session.bring([file("monday.gpx", writeGpx(rows))], setting, (words) => told.push(words)),
    );
    const drive = driveIn(brought);
    const driven_m = drive.trips.reduce((sum, trip) => sum + trip.distance_m, 0);
    expect(Math.abs(driven_m / truth_m - 1)).toBeLessThan(0.01);
    expect(drive.trips).toHaveLength(2);
    expect(drive.places.map(({ times }) => times)).toEqual([1]);
    expect(drive.repairs.map(({ kind }) => kind)).toContain("tunnel");
    expect([...new Set(told)]).toEqual(["Reading monday.gpx", "Cleaning", "Sorting out the trips"]);
  });

  it("is shown by parts that fit the road made of them, and nothing of where or when goes into the road", async () => {
    value(await session.bring([file("week.gpx", writeGpx(week))], setting, quiet));
    const view = value(await session.view("day:2024-05-04"));
    const { road, distance_m } = value(await session.roadOf("day:2024-05-04", "A day"));
    expect(Road.safeParse({ ...road, id: "log-1" }).success).toBe(true);
    if (road.kind !== "trace") throw new Error("expected a trace");
    expect(view.cleaned.speed_mps).toHaveLength(road.time_s.length);
    expect(view.track?.latitude_deg).toHaveLength(road.time_s.length);
    expect(view.tripRows).toHaveLength(2);
    expect(view.raw.time_s.every((time_s, i) => i === 0 || time_s >= view.raw.time_s[i - 1])).toBe(true);
    expect(Math.abs(distance_m / truth_m - 1)).toBeLessThan(0.01);
    expect(Object.keys(road).sort()).toEqual(["hills", "kind", "speed_kmh", "spread", "time_s", "title"]);
    expect(road.time_s[0]).toBe(0);
    expect(Math.max(...road.time_s)).toBeLessThan(4000); // no moment of the calendar
  });

  it("hands the road how far the log leaves it open: a day sampled every ten seconds more than a dense one", async () => {
    const spreadOf = async (kept: readonly LogRow[]) => {
      value(await session.bring([file("a.gpx", writeGpx(kept))], setting, quiet));
      const { road } = value(await session.roadOf("whole", "A road"));
      if (road.kind !== "trace" || !road.spread) throw new Error("expected a trace with its spread");
      expect(Road.safeParse({ ...road, id: "log-1" }).success).toBe(true);
      const { low, high } = road.spread.energy_ratio;
      expect(low).toBeLessThan(1);
      expect(high).toBeGreaterThan(1);
      return high - low;
    };
    const bare = rows.map((row) => ({ ...row, speed_mps: Number.NaN }));
    const [dense, thin] = [await spreadOf(rows), await spreadOf(bare.filter((_, i) => i % 10 === 0))];
    // How wide each has to be is held against known truths in tests/reference/logEnergy.test.ts.
    expect(thin).toBeGreaterThan(1.5 * dense);
  });

  it("changes with a class of repair left out, and comes back with it", async () => {
    const before = driveIn(value(await session.bring([file("monday.gpx", writeGpx(rows))], setting, quiet)));
    const without = driveIn(value(await session.again({ ...setting, off: ["multipath", "heightNoise"] }, quiet)));
    expect(without.repairs.map(({ kind }) => kind)).not.toContain("multipath");
    const climb = (drive: Drive) => drive.trips.reduce((sum, trip) => sum + (trip.climb_m ?? 0), 0);
    // Noise of 3 m over 60 s adds a half to the 240 m of this road, less where a smoothed height keeps some of it.
    expect(climb(without)).toBeGreaterThan(1.3 * climb(before));
    expect(driveIn(value(await session.again(setting, quiet)))).toEqual(before);
  });

  it("says of a repair that is left out what it had moved, as long as it is left out", async () => {
    value(await session.bring([file("monday.gpx", writeGpx(rows))], setting, quiet));
    const without = driveIn(value(await session.again({ ...setting, off: ["heightNoise"] }, quiet)));
    expect(without.moved?.heightNoise).toMatch(/climb -\d+ m$/);
    const both = driveIn(value(await session.again({ ...setting, off: ["heightNoise", "multipath"] }, quiet)));
    expect(both.moved?.heightNoise).toBe(without.moved?.heightNoise);
    expect(both.moved?.multipath).toMatch(/distance|energy|climb/);
    expect(driveIn(value(await session.again({ ...setting, off: ["multipath"] }, quiet))).moved).toEqual({
      multipath: both.moved?.multipath,
    });
  });

  it("is split anew without being cleaned anew", async () => {
    value(await session.bring([file("monday.gpx", writeGpx(rows))], setting, quiet));
    const told: string[] = [];
    const drive = driveIn(value(await session.again({ ...setting, parkedLonger_s: 600 }, (words) => told.push(words))));
    expect(drive.trips.length).toBe(1);
    expect(told).toEqual(["Sorting out the trips"]);
  });

  it("given up leaves what was there before", async () => {
    const before = value(await session.bring([file("monday.gpx", writeGpx(rows))], setting, quiet));
    const many = await session.bring([file("week.gpx", writeGpx(week))], setting, () => void session.cancel());
    expect(many.kind).toBe("cancelled");
    expect(value(await session.again(setting, quiet))).toEqual(before);
  });

  it("leaves out what is no log among several, and says so", async () => {
    const photo = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, ...new Array<number>(40).fill(7)]);
    const brought = value(await session.bring([file("a.jpg", photo), file("b.gpx", writeGpx(rows))], setting, quiet));
    expect(brought.files.map((each) => each.file)).toEqual(["b.gpx"]);
    expect(brought.leftOut.map(({ message }) => message).join()).toMatch(/photograph/);
  });

  it.each([
    ["an empty file", "", /empty/],
    ["a photograph", "\xff\xd8\xff photo", /is read as GPX/],
    ["XML with entities", '<!DOCTYPE g [<!ENTITY a "b">]><gpx><trk/></gpx>', /entities/],
    ["prose", "Dear Mr Miller,\nthe car stands ready.\n", /is read as GPX/],
  ])("refuses %s in one sentence and keeps what was there", async (_, content, sentence) => {
    const before = value(await session.bring([file("monday.gpx", writeGpx(rows))], setting, quiet));
    const refused = await session.bring([file("other", content)], setting, quiet);
    expect(refused.kind).toBe("refused");
    expect(messages(refused)).toMatch(sentence);
    expect(value(await session.again(setting, quiet))).toEqual(before);
  });

  it.each([
    ["a single point", rows.slice(0, 1)],
    [
      "fixes at 0,0 only",
      rows.slice(0, 100).map((row) => ({ ...row, latitude_deg: 0, longitude_deg: 0, speed_mps: Number.NaN })),
    ],
  ])("says of %s why no drive comes of it, its reading still seen", async (_, few) => {
    const brought = value(await session.bring([file("few.gpx", writeGpx(few))], setting, quiet));
    expect(brought.files).toHaveLength(1);
    expect(brought.outcome.kind).toBe("unclean");
  });

  it("asks what a table leaves open, and takes the answer", async () => {
    const text = new TextDecoder().decode(writeCsv(rows));
    const bare = text
      .split("\n")
      .map((line, i) => (i === 0 ? "speed" : (line.split(",")[3] ?? "")))
      .join("\n");
    const open = value(await session.bring([file("bare.csv", bare)], setting, quiet));
    expect(open.files[0].questions.filter(({ decided }) => !decided).map(({ name }) => name)).toContain("interval");
    const half_m = (brought: Brought) => driveIn(brought).trips.reduce((sum, trip) => sum + trip.distance_m, 0);
    const answered = value(await session.again({ ...setting, answers: [{ interval_s: 2, speedUnit: "kmh" }] }, quiet));
    expect(answered.files[0].questions.every(({ decided }) => decided)).toBe(true);
    expect(half_m(answered) / half_m(open)).toBeCloseTo(2, 1);
  });

  it("makes a road of a planned route at the speed asked for, with its hills", async () => {
    const text = new TextDecoder()
      .decode(writeGpx(rows))
      .replace(/<time>[^<]*<\/time>/g, "")
      .replace(/<extensions>.*?<\/extensions>/g, "");
    const brought = value(await session.bring([file("route.gpx", text)], setting, quiet));
    if (brought.outcome.kind !== "route") throw new Error("expected a planned route");
    const driving = { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 };
    const { road, distance_m } = value(await session.routeRoad(60, 0, driving, "Planned"));
    expect(distance_m).toBeCloseTo(brought.outcome.distance_m, 3);
    expect(road.kind === "trace" && Math.max(...road.speed_kmh)).toBeCloseTo(60, 2);
    expect(road.hills).toBeDefined();
  });
});

describe("a road without a log", () => {
  const driving = { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 };

  it("is typed as a list", async () => {
    const { road, distance_m } = value(
      await session.typedRoad("3 km at 50 km/h, 2 stops a km, then 12 miles at 45 mph", driving, "Typed"),
    );
    expect(distance_m).toBeCloseTo(3000 + 12 * 1609.344, 3);
    expect(Road.safeParse({ ...road, id: "typed-1" }).success).toBe(true);
  });

  it("says which piece cannot be read", async () => {
    expect(messages(await session.typedRoad("3 km at 50 km/h, then home", driving, "Typed"))).toMatch(
      /leg 2: found "home"/,
    );
  });

  it("is a standard cycle, repeated to a distance", async () => {
    const { road, distance_m } = value(await session.cycleRoad({ cycle: "udds", title: "Town", distance_km: 40 }));
    expect(road.kind).toBe("trace");
    expect(distance_m).toBeCloseTo(40_000, 3);
  });

  it("is a standard cycle once, with hills under it", async () => {
    const hills = { distance_km: [0, 2, 5], elevation_m: [100, 160, 90] };
    const { road } = value(await session.cycleRoad({ cycle: "wltc-class-2:low", title: "Low", hills }));
    expect(road.kind).toBe("cycle");
    expect(road.hills?.elevation_m[0]).toBe(100);
    expect(Math.max(...(road.hills?.elevation_m ?? []))).toBeCloseTo(160, 0);
    expect(Road.safeParse({ ...road, id: "cycle-1" }).success).toBe(true);
  });
});
