import { signal } from "@preact/signals-core";
import { render } from "lit-html";
import { expect, it } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { noteView, otherNotesView } from "../../../../web/notebook/notes/noteView.ts";
import { sections } from "../../../../web/sections/index.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const notes = [
  { after: "theCar", text: "Leaks oil." },
  { after: "wiringOfAnotherEdition", text: "Loom is brittle." },
  { after: "theCar", text: "Boot floor is rotten." },
  { after: "", text: "Of no place at all." },
];
const context = createFieldContext(createJobEditor({ job: { ...demoJob(), notes }, drafts: {} }), noRoads);
const figures = signal([]);

/** The notes that a view can be written in, in their order. */
function writtenIn(view: unknown): readonly string[] {
  const place = document.createElement("div");
  render(view, place);
  return [...place.querySelectorAll("textarea")].map(({ value }) => value);
}

it("every note has one place: all of a section's below it, those of no section of this page at the end", () => {
  const below = sections.flatMap((section) => writtenIn(noteView(section, context, figures)));
  expect(below).toEqual(["Leaks oil.", "Boot floor is rotten."]);
  const further = otherNotesView(sections, context, figures);
  expect(writtenIn(further)).toEqual(["Loom is brittle.", "Of no place at all."]);
});

it("the end names no part of another edition by its name in the program", () => {
  const place = document.createElement("div");
  render(otherNotesView(sections, context, figures), place);
  expect(place.textContent).toContain("Note to a part that this page does not have, 2 of 2");
  expect(place.textContent).not.toContain("wiringOf");
});
