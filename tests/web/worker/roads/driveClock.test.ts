import { expect, it } from "vitest";
import { openRoutes } from "../../../../sim/index.ts";
import { driveClock } from "../../../../web/worker/roads/driveClock.ts";
import { makeLog, makeTruth, openSky } from "../../../logs/logMaker.ts";
import { writeGpx } from "../../../logs/logWriter.ts";

const routes = await openRoutes();
const rows = makeLog(makeTruth(new Array(60).fill(15), 1), { ...openSky, seed: 2, elevation_m: undefined });
const joined = routes.joinLogs([routes.readLog("a.gpx", writeGpx(rows))]);
const setting = { answers: [], off: [], parkedLonger_s: 600 };

/** The same log, driven at another longitude. */
function drivenAt(longitude_deg: number): typeof joined {
  const { fixes } = joined;
  return { ...joined, fixes: { ...fixes, longitude_deg: fixes.longitude_deg.map(() => longitude_deg) } };
}

/** What this computer's clock is ahead of UTC at the log's time. */
const here_s = -60 * new Date(1000 * joined.fixes.time_s[0]).getTimezoneOffset();

it("takes what was set, else what the file says", () => {
  expect(driveClock(routes, joined, { ...setting, utcOffset_s: 7200 })).toEqual({
    offset_s: 7200,
    from: "as set here",
  });
  const local = { ...joined, hasZone: false, utcOffset_s: 3600 };
  expect(driveClock(routes, local, setting)).toEqual({ offset_s: 0, from: "the log's times are local already" });
  const written = { ...joined, hasZone: true, utcOffset_s: 3600 };
  expect(driveClock(routes, written, setting)).toEqual({ offset_s: 3600, from: "written in the log" });
});

it("guesses by this computer's clock where that fits the place, else by whole hours of the longitude", () => {
  const near = { ...drivenAt(here_s / 240), hasZone: true, utcOffset_s: 0 };
  expect(driveClock(routes, near, setting)).toEqual({ offset_s: here_s, from: "a guess: this computer's own clock" });
  // 100° at 15° an hour are nearer to seven hours than to six.
  const hours = here_s > 0 ? -7 : 7;
  const far = { ...drivenAt(hours < 0 ? -100 : 100), hasZone: true, utcOffset_s: 0 };
  expect(driveClock(routes, far, setting)).toEqual({ offset_s: 3600 * hours, from: "a guess by the longitude" });
});
