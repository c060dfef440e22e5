import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { kindChoice } from "../../../web/fields/kindChoice.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const id = "#kind-motor-loss";
const page = (flat: Readonly<Record<string, unknown>> = { kind: "flat", efficiency_frac: 0.85 }) =>
  formPage(demoJob(), (form) =>
    kindChoice(
      form,
      "motor.loss",
      "Losses",
      [
        { key: "fourTerm", words: "by formula", make: () => ({}) },
        { key: "flat", words: "one efficiency", make: (_job: Job) => flat },
        { key: "lossTable", words: "a map" },
      ],
      form.job.motor.loss.kind,
    ),
  );

it("makes the group in the chosen shape in one step, its figures said to be usual ones", () => {
  const { choose, job, jobEditor, said } = page();
  expect(said(".as-printed")).toBe("by formula");
  choose(id, "flat");
  expect(job().motor.loss).toEqual({ kind: "flat", efficiency_frac: 0.85 });
  expect(job().origins["motor.loss.efficiency_frac"]).toEqual({ from: "usual" });
  // What was said of the losses before is of other figures.
  expect(job().origins["motor.loss"]).toBeUndefined();
  expect(said(".as-printed")).toBe("one efficiency");
  jobEditor.undo();
  expect(job()).toEqual(demoJob());
});

it("does not offer a shape that only a file brings, and does nothing where it is asked for all the same", () => {
  const { choose, at, job } = page();
  expect(at("option[value=lossTable]").disabled).toBe(true);
  expect(at("option[value=flat]").disabled).toBe(false);
  choose(id, "lossTable");
  expect(job()).toEqual(demoJob());
});

it("says why where the job does not take the shape", () => {
  const { choose, job, said } = page({ kind: "flat", efficiency_frac: 7 });
  choose(id, "flat");
  expect(job().motor.loss.kind).toBe("fourTerm");
  expect(said(".refused")).toMatch(/^Not done: /);
});
