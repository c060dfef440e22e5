import type { Browser } from "playwright-core";
import { demos } from "../../shared/demos/index.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import type { OwnChart } from "../../shared/job/schema/chart.ts";
import { makeLog, makeTruth } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { cycleSpeeds_mps } from "./cycleSpeeds.ts";
import { answered, worked } from "./notebookPage.ts";
import { type OpenNotebook, openNotebook, openWorkings } from "./openNotebook.ts";

const charts: OwnChart[] = [
  { x: "time", y: "batteryCurrent", packs: [], caption: "" },
  { x: "distance", y: "motorPower", packs: [], caption: "" },
  { x: "motorSpeed", y: "motorTorque", colour: "motorLoss", packs: [], caption: "" },
  { x: "batteryCurrent", y: "batteryVoltage", packs: [], caption: "" },
];

/** Days of three lengths, with heights. */
const week = Buffer.from(
  writeGpx(
    ["nycc", "wltc-class-1", "wltc-class-2"].flatMap((cycle, day) => {
      const truth = makeTruth(cycleSpeeds_mps(cycle), day, (d) => 100 + 30 * Math.sin(d / 900));
      const spoiling = { seed: day, sampling_s: 1, position_m: 3, white_m: 0.5, speed_mps: 0.15, elevation_m: 3 };
      return makeLog(truth, { ...spoiling, hasMultipath: true, hasDropouts: true }, 1714723200 + day * 86_400);
    }),
  ),
);

/** The demo jobs with charts of their own: lines against time and distance, dots coloured by a third, dots by pack. */
export const jobsWithCharts: readonly (readonly [id: string, job: Job])[] = demos.map(({ id, document }) => [
  id,
  { ...readJob(structuredClone(document)), charts },
]);

/** A notebook with this job and a brought-in log of three days, all its figures drawn: every kind the page has. */
export async function openWithFigures(
  browser: Browser,
  job: Job,
  { width = 1440, hasTouch = false } = {},
): Promise<OpenNotebook> {
  const notebook = await openNotebook(browser, width, 900, hasTouch, true);
  const { page } = notebook;
  const buffer = Buffer.from(JSON.stringify(job));
  await page.setInputFiles("#job-file", { name: "own.bellhousing.json", mimeType: "application/json", buffer });
  await page.waitForFunction((title) => document.querySelector("h1")?.textContent?.includes(title), job.title);
  await openWorkings(page);
  await page.waitForFunction(
    (count) => document.querySelectorAll("#ownCharts figure").length === count,
    job.charts?.length ?? 0,
  );
  await worked(page);
  await page.setInputFiles("#road-log", { name: "week.gpx", mimeType: "text/plain", buffer: week });
  await page.waitForSelector("#theRoad .offer", { timeout: 60_000 });
  // Its cleaning, its days and its track; and since it answers at once, the road's own track beside the speed.
  await page.waitForFunction(() => document.querySelectorAll("#theRoad figure").length === 5);
  await answered(page);
  await worked(page);
  return notebook;
}
