import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { withPath } from "../../../../shared/job/path.ts";
import { alternativesForm } from "../../../../web/forms/costs/alternativesForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const without = (...paths: string[]): Job =>
  paths.reduce((job: Job, path) => withPath(job, path, path.endsWith("alternatives") ? [] : undefined), demoJob());
const names = (job: Job) => job.costs?.alternatives.map(({ name }) => name);

it("is nothing in a job without costs", () => {
  expect(formPage(without("costs"), alternativesForm).said()).toBe("");
});

it("begins with an engine rebuild, goes on with other cars under names of their own, and stops at six", () => {
  const { press, job, buttons } = formPage(without("costs.alternatives"), alternativesForm);
  for (let i = 0; i < 6; i++) press(/^Add an alternative$/);
  const given = names(job()) ?? [];
  expect(given.slice(0, 2)).toEqual(["engine rebuild", "another car"]);
  expect(new Set(given).size).toBe(6);
  expect(buttons()).not.toContain("Add an alternative");
});

it("starts the running costs of an alternative as the car's now", () => {
  const { press, job } = formPage(demoJob(), alternativesForm);
  press(/^Add the running costs of engine rebuild$/);
  // As the demo's record: 8.8 l/100 km, servicing of 340 to 460 a year.
  expect(job().costs?.alternatives[0].running).toEqual({
    use_l100km: 8.8,
    servicing: { low: 340, high: 460 },
    roadCharge_perday: 0,
  });
});

it("starts them with an assumed consumption where there is no fuel record", () => {
  const { press, job } = formPage(without("costs.running"), alternativesForm);
  press(/^Add the running costs of engine rebuild$/);
  expect(job().costs?.alternatives[0].running).toMatchObject({ use_l100km: 9.5, servicing: { low: 0 } });
});
