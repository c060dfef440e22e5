import { beforeAll, describe, expect, it } from "vitest";
import { openMeasuring, openRoutes } from "../../../sim/index.ts";
import type { LogInView } from "../../../web/log/logInView.ts";
import type { Worked } from "../../../web/sections/parts/section.ts";
import theRoad from "../../../web/sections/theRoad.ts";
import { createLogSession } from "../../../web/worker/roads/logSession.ts";
import { makeLog, makeTruth, type Spoiling, withParking } from "../../logs/logMaker.ts";
import { writeCsv, writeGpx } from "../../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../../support/cycleSpeeds.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const spoiling: Spoiling = {
  seed: 5,
  sampling_s: 1,
  position_m: 3,
  white_m: 0.5,
  speed_mps: 0.15,
  elevation_m: 3,
  hasMultipath: true,
  hasDropouts: true,
};
const truth = makeTruth(withParking(cycleSpeeds_mps("wltc-class-2"), 300), 3, (d) => 100 + 30 * Math.sin(d / 900));
const week = [0, 1].flatMap((day) => makeLog(truth, { ...spoiling, seed: day }, 1714723200 + day * 86_400));

async function onBench(name: string, bytes: Uint8Array, piece: string): Promise<LogInView> {
  const jobEditor = createLogSession(openRoutes, async (cycle) => ({ [cycle]: cycleTexts[cycle] }), openMeasuring);
  const setting = { answers: [], off: [], parkedLonger_s: 180, utcOffset_s: 0 };
  const brought = await jobEditor.bring([new File([bytes as BlobPart], name)], setting, () => {});
  const view = await jobEditor.view(piece);
  if (brought.kind !== "done" || brought.value.outcome.kind !== "drive" || view.kind !== "done") {
    throw new Error(`expected a drive, got ${JSON.stringify(brought)}`);
  }
  return { drive: brought.value.outcome, view: view.value, labels: { 0: "the yard" }, cutsEnds: true };
}

const values = sectionValues(demoJob());
const workedWith = (changes: Partial<typeof values>): readonly Worked[] => [
  ...theRoad.plot(theRoad.compute({ ...values, ...changes }), drawing(640)),
];
const textOf = (worked: readonly Worked[]) =>
  worked
    .flatMap((each) => ("chart" in each ? [each.caption, each.chart.alt] : [each.caption, ...each.rows.flat()]))
    .join("\n");

describe("the section of the road with a log not yet used", () => {
  let log: LogInView;
  beforeAll(async () => {
    log = await onBench("week.gpx", writeGpx(week), "day:2024-05-03");
  });

  it.each(["metric", "british", "american"] as const)("shows figures, trips and days in %s units", (units) => {
    const worked = workedWith({ logInView: log, units });
    expect(worked.map((each) => "chart" in each)).toEqual([true, true, true, false, false, true]);
    expect(textOf(worked)).not.toMatch(/NaN|undefined|Infinity|null|\[object/);
    expect(textOf(worked)).toContain("the yard");
    for (const each of worked) {
      if ("chart" in each) continue;
      for (const row of each.rows) expect(row).toHaveLength(each.columns.length);
    }
  });

  it("leaves the ends of trips out of the map, or not, as is asked", () => {
    const rows = (cutsEnds: boolean) => {
      const map = workedWith({ logInView: { ...log, cutsEnds } })[2];
      return "chart" in map ? map.chart.table.rows : [];
    };
    const near = (row: readonly (string | number)[]) =>
      Math.hypot(Number(row[2]) - truth.latitude_deg[0], (Number(row[1]) - truth.longitude_deg[0]) * 0.61) * 111_195;
    expect(Math.min(...rows(false).map(near))).toBeLessThan(20);
    expect(rows(true).length).toBeLessThan(rows(false).length);
    expect(near(rows(true)[0])).toBeGreaterThan(100);
  });

  it("has no map of a log without positions", async () => {
    const text = new TextDecoder().decode(writeCsv(week)).replaceAll(/^([^,]*),[^,]*,[^,]*,/gm, "$1,");
    const bare = await onBench("week.csv", new TextEncoder().encode(text), "whole");
    const worked = workedWith({ logInView: bare });
    expect(worked.filter((each) => "chart" in each)).toHaveLength(3);
    expect(textOf(worked)).not.toMatch(/NaN|Where was it driven/);
  });

  it("says that the positions of a recorded road are gone", () => {
    const worked = workedWith({ keptTrack: { roadId: "log-1" } });
    expect(textOf(worked)).toContain("positions of this road are not in this browser");
  });
});
