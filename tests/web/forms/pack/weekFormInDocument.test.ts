import { expect, it } from "vitest";
import type { WeekDay } from "../../../../shared/job/schema/week.ts";
import { weekForm } from "../../../../web/forms/pack/weekForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const road = "udds"; // the first of the demo's roads, and the one that is driven
const garage = "Garage, household socket";
const day = (from: WeekDay["from"], to: WeekDay["from"], ...trips: WeekDay["trips"]): WeekDay => ({ from, to, trips });

function page(...days: WeekDay[]) {
  const { week: _week, ...job } = demoJob();
  const shown = formPage({ ...job, ...(days.length > 0 && { week: { days } }) }, weekForm);
  const pressIn = (index: number, words: string) => {
    const button = [...shown.at(`#week-day-${index}`).querySelectorAll("button")].find(
      ({ textContent }) => textContent?.trim() === words,
    );
    if (!button) throw new Error(`no ${words} in day ${index}`);
    button.click();
  };
  return { ...shown, pressIn, days: () => shown.job().week?.days ?? [] };
}

it("starts with the working days: out in the morning, back in the evening, charged at the first place", () => {
  const { press, days, texts } = page();
  press(/^Add the week by the clock$/);
  expect(days()).toEqual([
    day(
      "monday",
      "friday",
      { leaves: "8:00", arrives: "9:00", road, way: "once" },
      { leaves: "17:00", arrives: "18:00", road, way: "back", parkedAt: garage },
    ),
  ]);
  expect(texts("legend")).toContain("Monday to Friday");
});

it("adds the first weekday that no day stands for, until all are there", () => {
  const { press, days, said, buttons } = page(day("monday", "tuesday"), day("thursday", "saturday"));
  press(/^Add a day$/);
  press(/^Add a day$/);
  expect(days().map(({ from, to }) => `${from} ${to}`)).toEqual(
    expect.arrayContaining(["wednesday wednesday", "sunday sunday"]),
  );
  expect(days()).toHaveLength(4);
  expect(buttons()).not.toContain("Add a day");
  expect(said()).toContain("Every day of the week is there.");
});

it("adds a first trip in the morning, and the next one an hour after the last, the other way", () => {
  const { pressIn, days } = page(day("monday", "friday"));
  pressIn(0, "Add a trip");
  pressIn(0, "Add a trip");
  expect(days()[0].trips).toEqual([
    { leaves: "8:00", arrives: "9:00", road, way: "once" },
    { leaves: "10:00", arrives: "11:00", road, way: "back" },
  ]);
});

it("forgets the times of charging with the place, and asks for none where nothing is charged", () => {
  const trip = { leaves: "8:00", arrives: "9:00", road, way: "once" as const, parkedAt: garage };
  const { choose, days, buttons } = page(day("monday", "friday", { ...trip, plugged: { from: "23:30", to: "5:30" } }));
  expect(buttons().some((words) => words.startsWith("Remove the times of charging"))).toBe(true);
  choose("#choice-week-days-0-trips-0-parkedAt", "");
  expect(days()[0].trips[0]).toEqual({ leaves: "8:00", arrives: "9:00", road, way: "once" });
  expect(buttons().some((words) => words.includes("times of charging"))).toBe(false);
});
