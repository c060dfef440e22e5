import { expect, it } from "vitest";
import { logRoadForm } from "../../../../web/forms/road/logRoadForm.ts";
import type { Drive } from "../../../../web/worker/roads/roadsApi.ts";
import { answered, answeringRoads, logDay, logDrive, logTrip, madeRoad } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page(drive: Drive, isOpen = false) {
  const asked: string[] = [];
  const roadOf = async (piece: string, title: string) => {
    asked.push(`${piece}: ${title}`);
    return { kind: "done" as const, value: madeRoad };
  };
  const roads = answeringRoads({ roadOf });
  return { ...formPage(demoJob(), (form) => logRoadForm(form, drive, isOpen), roads), asked };
}
const three = logDrive({
  days: [logDay("2024-05-03", 30), logDay("2024-05-04", 12), logDay("2024-05-05", 95)],
  trips: [logTrip(30_000), logTrip(12_000, "2024-05-04"), logTrip(95_000, "2024-05-05")],
});
const make = "Make it a road of this job";

it("makes a road of the whole under its usual words where none are written, measured, and drives it", async () => {
  const { type, press, asked, job, context } = page(logDrive());
  type("#log-title", " ");
  press(new RegExp(make));
  await answered();
  expect(asked).toEqual(["whole: Client's own road, 10 km"]);
  expect(job().roads.at(-1)).toEqual({ ...madeRoad.road, id: "log-1" });
  expect(job().drivenRoad).toBe("log-1");
  expect(job().origins[`roads.${job().roads.length - 1}`]?.from).toBe("measured");
  expect(context.view.staging.log.done.value).toContain("“Made” is now a road of this job");
});

it("makes none while something is open, or its words are too many", () => {
  const isHeld = ({ main }: ReturnType<typeof page>) =>
    [...main.querySelectorAll("button")].find(({ textContent }) => textContent === make)?.disabled;
  const open = page(logDrive(), true);
  expect(isHeld(open)).toBe(true);
  expect(open.said()).toContain("First say above what the log leaves open.");
  const long = page(logDrive());
  expect(isHeld(long)).toBe(false);
  long.type("#log-title", "a".repeat(201));
  expect(isHeld(long)).toBe(true);
});

it("takes the middle day as the usual one and the longest as the longest, as measured", () => {
  const { press, job } = page(three);
  press(/^Take the middle day, 30 km, as the usual day$/);
  expect(job().usualDay_km).toBe(30);
  expect(job().origins["usualDay_km"]?.from).toBe("measured");
  press(/^Take 95 km as the longest day$/);
  expect(job().longestDay_km).toBe(95);
});

it("draws the year's days from all days of the log", () => {
  const { press, job } = page(three);
  press(/^Draw the year's days from these 3$/);
  expect(job().year?.daysDriven_km).toEqual([30, 12, 95]);
});

it("sets with them the driving days a week where the log's dates span one, and says so with how to go back", () => {
  const days = ["04-29", "05-01", "05-06"].map((date) => logDay(`2024-${date}`, 30));
  const { press, job, context } = page(logDrive({ days }));
  press(/^Draw the year's days from these 3$/);
  expect(job().year?.daysAWeek).toBe(2);
  expect(context.view.staging.log.done.value).toBe(
    "The year’s driven days are drawn from 3 days of the log, 2 driven days a week by its dates. Undo goes back to what was before.",
  );
  context.jobEditor.undo();
  expect(job().year).toEqual(demoJob().year);
});

it("takes a single day for no longest one and no year", () => {
  expect(page(logDrive()).buttons()).toEqual([make, "Take this day, 10 km, as the usual day"]);
});

it("asks for the local time of a log with dates, in every zone there is, and of no other", () => {
  const { texts, has } = page(logDrive());
  const zones = texts("#log-zone option");
  expect(zones).toEqual(
    expect.arrayContaining(["as written (UTC)", "UTC − 3:30 h", "UTC + 5:45 h", "UTC + 14:00 h", "UTC − 12:00 h"]),
  );
  expect(new Set(zones).size).toBe(zones.length);
  expect(has("#log-cut")).toBe(true);
  const counted = page(logDrive({ days: [logDay("1970-01-01", 10)], hasPositions: false }));
  expect(counted.has("#log-zone")).toBe(false);
  expect(counted.has("#log-cut")).toBe(false);
});

it("names eight places at most, each with how often and how long, and by 40 letters at most", () => {
  const places = Array.from({ length: 9 }, (_, i) => ({ label: `place ${i}`, parked_s: 1440, times: i + 1 }));
  const { texts, type, said } = page(logDrive({ places }));
  const labels = texts(".log-places label");
  expect(labels).toHaveLength(8);
  expect(labels.slice(0, 2)).toEqual(["1 time, 24 min in all", "2 times, 24 min in all"]);
  type("#log-place-1", "a".repeat(41));
  expect(said("#log-place-1-says")).toBe("Wrong: found 41 letters, at most 40 can be kept.");
});
