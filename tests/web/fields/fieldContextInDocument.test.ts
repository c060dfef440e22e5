import { html } from "lit-html";
import { expect, it } from "vitest";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const nothingDrawn = () => html``;

it("begins anew with another job what was looked at, typed, asked and staged for the one before", () => {
  const { context, jobEditor, job } = formPage(demoJob(), nothingDrawn);
  const { view } = context;
  const before = view.staging;
  view.packIndex.value = 2;
  view.isForClient.value = true;
  view.openWorkings.value = new Set(["hills"]);
  context.typedHere.add("vehicle.kerb_kg");
  context.remembered.value = { cwt: "100" };
  before.chosen.value = { motor: "some" };
  jobEditor.open({ job: job(), drafts: {} });
  expect([view.packIndex.value, view.isForClient.value, context.typedHere.size]).toEqual([undefined, false, 0]);
  expect(context.remembered.value).toEqual({});
  expect(view.staging).not.toBe(before);
  expect(view.staging.chosen.value).toEqual({});
  // Which workings stand open is the reader's, whatever job it is.
  expect([...view.openWorkings.value]).toEqual(["hills"]);
});

it("keeps all of it while the same job is edited", () => {
  const { context, jobEditor } = formPage(demoJob(), nothingDrawn);
  const before = context.view.staging;
  context.view.packIndex.value = 2;
  jobEditor.editPlain("title", "Another title", "Name of the job");
  expect(context.view.packIndex.value).toBe(2);
  expect(context.view.staging).toBe(before);
});

it.each([
  ["vehicle.kerb_kg", "input[type=text]"],
  ["sizing.day", "select"],
  ["motor.canRegenerate", "input[type=checkbox]"],
  ["title", "input[type=text]"],
  ["use", "textarea"],
])("draws %s as %s", (path, selector) => {
  const { at } = formPage(demoJob(), (form) => form.field(path));
  expect(at(selector).id).toBe(`field-${path.replaceAll(".", "-")}`);
});

it("calls a field by other words where it is given them", () => {
  const { said } = formPage(demoJob(), (form) => form.field("vehicle.kerb_kg", "Weight of the van"));
  expect(said("label")).toBe("Weight of the van");
});

it("counts on a fold what is wrong at or below its paths, and not what is wrong beside them", () => {
  const drafts = Object.fromEntries(
    ["packs.0.name", "packs.1.name", "packs.10.name", "vehicle.kerb_kg"].map((path) => [path, { typed: "x" }]),
  );
  const { texts } = formPage(
    { job: demoJob(), drafts },
    (form) => html`
    ${form.fold("Some", html``, "packs.0", "packs.1")} ${form.fold("None", html``, "motor")}
  `,
  );
  expect(texts("summary")).toEqual(["Some (2 wrong)", "None"]);
});
