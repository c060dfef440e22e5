import { expect, it } from "vitest";
import { plannedRouteForm } from "../../../../web/forms/road/plannedRouteForm.ts";
import type { LogSetting } from "../../../../web/worker/roads/roadsApi.ts";
import { answered, answeringRoads, broughtLog, logDrive, madeRoad } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page() {
  const asked: unknown[] = [];
  const roads = answeringRoads({
    routeRoad: async (...wanted) => {
      asked.push(wanted);
      return { kind: "done", value: madeRoad };
    },
    again: async ({ answers }: LogSetting) => {
      asked.push(answers);
      return { kind: "done", value: broughtLog({ outcome: logDrive({ trips: [] }) }) };
    },
  });
  const route = { kind: "route", distance_m: 12_000 } as const;
  const shown = formPage(demoJob(), (form) => plannedRouteForm(form, route, "12 km, without heights"), roads);
  const isHeld = (words: string) =>
    [...shown.main.querySelectorAll("button")].find(({ textContent }) => textContent?.trim() === words)?.disabled;
  return { ...shown, asked, isHeld };
}
const make = "Make it a road of this job";
const read = "Read it as a drive";

it("is driven as stated, and the road is said to be guessed", async () => {
  const { type, press, asked, job } = page();
  type("#route-speed", "30 mph");
  press(new RegExp(make));
  await answered();
  expect(asked).toEqual([
    [
      expect.closeTo(48.28032, 9), // 30 × 1.609344
      0.5,
      { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 },
      "Client's planned route",
    ],
  ]);
  expect(job().drivenRoad).toBe("typed-1");
  expect(job().origins[`roads.${job().roads.length - 1}`]).toMatchObject({
    from: "guessed",
    note: expect.stringContaining("12 km, without heights"),
  });
});

it.each(["#route-speed", "#route-stops", "#route-up"])("makes no road while %s cannot be read", (field) => {
  const { type, isHeld } = page();
  expect(isHeld(make)).toBe(false);
  type(field, "fast");
  expect(isHeld(make)).toBe(true);
});

it("is read as a drive once the time between its rows is said", async () => {
  const { type, press, asked, isHeld } = page();
  expect(isHeld(read)).toBe(true);
  type("#route-interval", "2 s");
  expect(isHeld(read)).toBe(false);
  press(new RegExp(read));
  await answered();
  expect(asked).toEqual([[{ interval_s: 2 }]]);
});
