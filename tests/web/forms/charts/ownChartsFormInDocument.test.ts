import { expect, it } from "vitest";
import type { OwnChart } from "../../../../shared/job/schema/chart.ts";
import { ownChartsForm } from "../../../../web/forms/charts/ownChartsForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const first: OwnChart = { x: "time", y: "batteryCurrent", packs: [], caption: "" };
const page = (...charts: OwnChart[]) => formPage({ ...demoJob(), charts }, ownChartsForm);
const tick = (shown: ReturnType<typeof page>, selector: string, isOn: boolean) => {
  shown.at(selector).checked = isOn;
  shown.fire(selector, "change");
};

it("makes a chart, and removes the one that is meant", () => {
  const { press, job } = page({ ...first, caption: "kept" });
  press(/^Make a chart$/);
  expect(job().charts).toHaveLength(2);
  press(/^Remove chart 2$/);
  expect(job().charts.map(({ caption }) => caption)).toEqual(["kept"]);
});

it("changes one axis of one chart, and colours by a quantity or by pack again", () => {
  const { choose, job } = page(first, first);
  choose("#own-1-y", "motorTorque");
  expect(job().charts.map(({ y }) => y)).toEqual(["batteryCurrent", "motorTorque"]);
  choose("#own-0-colour", "motorLoss");
  expect(job().charts[0]).toEqual({ ...first, colour: "motorLoss" });
  choose("#own-0-colour", "");
  expect(job().charts[0]).toEqual(first);
});

it("shows all packs until one is left out, and names the others in their own order", () => {
  const shown = page(first);
  expect(shown.at("#own-0-pack-1").checked).toBe(true);
  tick(shown, "#own-0-pack-1", false);
  // The demo's packs are 8, 13, 17, 21 and 29 kWh.
  expect(shown.job().charts[0].packs).toEqual(["8 kWh", "17 kWh", "21 kWh", "29 kWh"]);
  tick(shown, "#own-0-pack-1", true);
  expect(shown.job().charts[0].packs).toEqual(["8 kWh", "13 kWh", "17 kWh", "21 kWh", "29 kWh"]);
});

it("keeps a caption that is too long in its field, with the reason", () => {
  const { type, job, at, said } = page(first);
  type("#own-0-caption", "short");
  expect(job().charts[0].caption).toBe("short");
  const long = "x".repeat(5000);
  type("#own-0-caption", long);
  expect(at("#own-0-caption").value).toBe(long);
  expect(said("#own-0-caption-says")).toMatch(/^Wrong: /);
});
