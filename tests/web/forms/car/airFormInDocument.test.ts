import { expect, it } from "vitest";
import { airForm } from "../../../../web/forms/car/airForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const way = "#kind-air-pressure";
const pressure = "environment.pressure_kPa";
const altitude = "environment.altitude_m";
const has = { pressure: "#field-environment-pressure_kPa", altitude: "#field-environment-altitude_m" };

it("shows the field of the way in which the pressure is known, and neither where it is taken as usual", () => {
  const page = formPage(demoJob(), airForm);
  expect([page.at(way).value, page.has(has.pressure), page.has(has.altitude)]).toEqual(["pressure", true, false]);
  page.choose(way, "altitude");
  expect([page.at(way).value, page.has(has.pressure), page.has(has.altitude)]).toEqual(["altitude", false, true]);
  page.choose(way, "usual");
  expect([page.at(way).value, page.has(has.pressure), page.has(has.altitude)]).toEqual(["usual", false, false]);
});

it("begins each way at the sea: 101.3 kPa, or a height of nought, and never keeps both", () => {
  const { choose, job } = formPage(demoJob(), airForm);
  choose(way, "altitude");
  expect(job().environment.altitude_m).toBe(0);
  expect(job().environment.pressure_kPa).toBeUndefined();
  choose(way, "pressure");
  expect(job().environment.pressure_kPa).toBe(101.3);
  expect(job().environment.altitude_m).toBeUndefined();
});

it("forgets what was said of the other way, and what waited in its field, and nothing else", () => {
  const job = demoJob();
  const origins = { ...job.origins, [pressure]: { from: "measured" as const } };
  const drafts = { [pressure]: { typed: "many", problem: "no number" }, "vehicle.name": { typed: "x", problem: "y" } };
  const page = formPage({ job: { ...job, origins }, drafts }, airForm);
  page.choose(way, "altitude");
  expect(page.job().origins).toEqual(job.origins);
  expect(Object.keys(page.jobEditor.drafts.value)).toEqual(["vehicle.name"]);
  page.jobEditor.undo();
  expect(page.job().origins[pressure]).toEqual({ from: "measured" });
  expect(page.job().origins[altitude]).toBeUndefined();
});
