import { expect, it } from "vitest";
import { logForm } from "../../../../web/forms/road/logForm.ts";
import type { Answer, Brought } from "../../../../web/worker/roads/roadsApi.ts";
import {
  answered,
  answeringRoads,
  broughtLog,
  logDrive,
  logQuestion,
  logReading,
} from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const still = logDrive({ trips: [], days: [], isStill: true });
const problem = { code: "x", where: "line 7", message: "found no time" };

/** The form after files were chosen, of which the worker says this. */
async function page(answer: Answer<Brought>) {
  const shown = formPage(demoJob(), logForm, answeringRoads({ bring: async () => answer, discard: async () => {} }));
  Object.defineProperty(shown.at("#road-log"), "files", { value: [new File(["x"], "week.csv")] });
  shown.fire("#road-log", "change");
  await answered();
  return shown;
}
const broughtOf = (...files: Brought["files"]) => page({ kind: "done", value: broughtLog({ files, outcome: still }) });

it.each([
  ["week.csv: a table, 3600 rows, speed in km/h.", { questions: [logQuestion({})] }],
  ["week.csv: a table, 1 row, no recorded speed.", { count: 1, hasSpeeds: false }],
  ["week.csv: NMEA 0183 sentences, 3600 rows, speed recorded.", { format: "nmea" }],
] as const)("says of a file: %s", async (words, change) => {
  const { texts } = await broughtOf(logReading(change));
  expect(texts(".offer > ul > li")).toEqual([words]);
});

it("counts the lines of all files that were not used, and says what else was noted", async () => {
  const faulty = logReading({ badLines: 1, problems: [problem] });
  expect((await broughtOf(faulty)).texts("summary")).toContain("Faults: 1 line not used");
  expect((await broughtOf(faulty, faulty)).texts("summary")).toContain("Faults: 2 lines not used");
  expect((await broughtOf(logReading({ problems: [problem] }))).texts("summary")).toContain("What else was noted");
});

it("says what was left out and why nothing was done", async () => {
  const left = await page({ kind: "done", value: broughtLog({ leftOut: [problem], outcome: still }) });
  expect(left.said()).toContain("Left out, since they are no logs:");
  expect(left.texts(".heed li")).toContain("line 7: found no time.");
  const refused = await page({ kind: "refused", problems: [problem] });
  expect(refused.said("[role=status]")).toBe("Not done; the job is as it was. line 7: found no time.");
  expect(refused.has(".offer")).toBe(false);
});

it("discards a log with the job as it was", async () => {
  const { press, has, job } = await broughtOf(logReading());
  press(/^Discard log$/);
  expect(has(".offer")).toBe(false);
  expect(job()).toEqual(demoJob());
});

it("leaves a job that is dropped here to the page", () => {
  const { at } = formPage(demoJob(), logForm);
  const event = new Event("drop", { bubbles: true, cancelable: true });
  at(".dropped-on").dispatchEvent(Object.assign(event, { dataTransfer: { files: [new File(["{}"], "car.JSON")] } }));
  expect(event.defaultPrevented).toBe(false);
});
