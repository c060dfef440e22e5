import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const input = "#field-vehicle-tyres-name";
const path = "vehicle.tyres.name";

it("takes every letter into the job, and all letters of one visit as one step", () => {
  const { type, fire, job, jobEditor } = formPage(demoJob(), (form) => form.field(path));
  for (const text of ["C", "Cr", "Cro", "Cross"]) type(input, text);
  expect(job().vehicle.tyres.name).toBe("Cross");
  fire(input, "blur");
  type(input, "Crossply");
  jobEditor.undo();
  expect(job().vehicle.tyres.name).toBe("Cross");
  jobEditor.undo();
  expect(job().vehicle.tyres.name).toBe(demoJob().vehicle.tyres.name);
});

it("keeps words that the job does not take and, once it is left, says why and what holds", () => {
  const { type, fire, job, at, said } = formPage(withPath(demoJob(), path, "Crossply"), (form) => form.field(path));
  const long = "x".repeat(1000);
  type(input, long);
  expect(said(".says")).toBe("");
  fire(input, "blur");
  expect(job().vehicle.tyres.name).toBe("Crossply");
  expect(at(input).value).toBe(long);
  expect(said(".says")).toMatch(/^Wrong: .*\. Using “Crossply”\.$/);
});

it("names of a long text that holds its first 40 letters", () => {
  const { type, fire, said } = formPage(withPath(demoJob(), path, "a".repeat(50)), (form) => form.field(path));
  type(input, "x".repeat(1000));
  fire(input, "blur");
  expect(said(".says")).toContain(`Using “${"a".repeat(40)} …”.`);
});
