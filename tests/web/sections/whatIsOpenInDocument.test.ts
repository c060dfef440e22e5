import { effect } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../web/fields/fieldContext.ts";
import whatIsOpen from "../../../web/sections/whatIsOpen.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

const guessed: Job["origins"] = {
  "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 0.3 },
  "vehicle.load_kg": { from: "usual" },
};

/** The fields of the working for a job with these origins, and what it takes to type in one. */
function fieldsOf(origins: Job["origins"]) {
  const jobEditor = createJobEditor({ job: { ...demoJob(0), origins }, drafts: {} });
  const context = { ...createFieldContext(jobEditor, noRoads), idPrefix: "open-" };
  const main = document.querySelector("main") as HTMLElement;
  render(nothing, main);
  effect(() => {
    render(whatIsOpen.given?.(createForm(context)) ?? nothing, main);
  });
  const inputs = () => [...main.querySelectorAll<HTMLInputElement>("input[type=text], input:not([type])")];
  return { jobEditor, main, inputs, ids: () => inputs().map(({ id }) => id) };
}

it("has a field for each value that is open, under ids of its own", () => {
  const { ids, main } = fieldsOf(guessed);
  expect(ids()).toEqual(["open-field-vehicle-load_kg", "open-field-vehicle-tyres-rolling_coeff"]);
  expect(main.textContent).toContain("Rolling resistance");
});

it("takes a value that is known now, and keeps its field until another job is opened", () => {
  const { inputs, ids, jobEditor } = fieldsOf(guessed);
  const [load] = inputs();
  load.value = "120";
  load.dispatchEvent(new Event("input", { bubbles: true }));
  jobEditor.settle();
  expect(jobEditor.job.value.vehicle.load_kg).toBe(120);
  expect(jobEditor.job.value.origins["vehicle.load_kg"]?.from).not.toBe("usual");
  expect(ids()).toHaveLength(2);
  expect(inputs()[0]).toBe(load);
  jobEditor.open({ job: jobEditor.job.value, drafts: {} });
  expect(ids()).toEqual(["open-field-vehicle-tyres-rolling_coeff"]);
});

it("says so where nothing is open", () => {
  expect(fieldsOf({}).main.textContent).toContain("Nothing that the range hangs on is open.");
});
