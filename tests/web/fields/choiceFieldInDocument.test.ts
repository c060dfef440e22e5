import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const path = "sizing.day";
const select = "#field-sizing-day";

it("offers the words of each choice, with that of the job chosen, and puts another one in by its key", () => {
  const { at, texts, choose, job, said } = formPage(demoJob(), (form) => form.field(path));
  expect(texts("option")).toEqual(["the usual day", "the longest day"]);
  expect(at(select).value).toBe("usual");
  choose(select, "longest");
  expect(job().sizing.day).toBe("longest");
  expect(said(".as-printed")).toBe("the longest day");
});

it("takes each choice as a step of its own", () => {
  const { choose, job, jobEditor } = formPage(demoJob(), (form) => form.field(path));
  choose(select, "longest");
  choose(select, "usual");
  jobEditor.undo();
  expect(job().sizing.day).toBe("longest");
});

it("has a choice more while the job says nothing", () => {
  const { texts, said } = formPage(withPath(demoJob(), "driveline.coupling", undefined), (form) =>
    form.field("driveline.coupling"),
  );
  expect(texts("option")[0]).toBe("not said");
  expect(said(".as-printed")).toBe("");
});

it("shows what is refused with the reason, and what holds until then", () => {
  const drafts = { [path]: { typed: "longest", problem: "the longest day is not known" } };
  const { at, said } = formPage({ job: demoJob(), drafts }, (form) => form.field(path));
  expect(at(select).value).toBe("longest");
  expect(at(select).getAttribute("aria-invalid")).toBe("true");
  expect(said(".says")).toBe("Wrong: the longest day is not known. Using the usual day.");
});
