import { render } from "lit-html";
import { expect, it } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import type { NumberedFigure } from "../../../../web/notebook/notes/figureNames.ts";
import { noteEditor } from "../../../../web/notebook/notes/noteEditor.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const figure = (number: number, isHidden = false): NumberedFigure => ({
  id: "roadLoad.forces",
  caption: "Forces",
  number,
  isHidden,
});

/** The editor of the job's only note, drawn anew for the figures of the page. */
function editor(text: string) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), notes: [{ after: "roadLoad", text }] }, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const place = document.createElement("div");
  place.className = "note";
  document.body.replaceChildren(place);
  const draw = (figures: readonly NumberedFigure[]) => {
    render(noteEditor(context, 0, "Note", figures), place);
    return place.querySelector("textarea") as HTMLTextAreaElement;
  };
  return { jobEditor, place, draw, kept: () => jobEditor.job.value.notes[0]?.text };
}

it("keeps the figure's name and shows its number, also when that becomes another", () => {
  const { draw, jobEditor, kept } = editor("");
  const field = draw([figure(5)]);
  field.value = "See Figure 5.";
  field.dispatchEvent(new Event("input"));
  field.dispatchEvent(new Event("change"));
  jobEditor.settle();
  expect(kept()).toContain("roadLoad.forces");
  expect(kept()).not.toContain("5");
  expect(draw([figure(7)]).value).toBe("See Figure 7.");
});

it("puts a figure into the note where its writer was", () => {
  const { draw, place, jobEditor } = editor("before  after");
  const field = draw([figure(5)]);
  field.setSelectionRange(7, 7);
  place.querySelector("button")?.click();
  expect(field.value).toBe("before Figure 5 after");
  jobEditor.settle();
  expect(draw([figure(5)]).value).toBe("before Figure 5 after");
  expect(document.activeElement).toBe(field);
});

it("says which figures the client does not see, and has no list where there is no figure", () => {
  const { draw, place } = editor("");
  draw([figure(1), figure(2, true)]);
  const lines = [...place.querySelectorAll("li")].map(({ textContent }) =>
    /hidden from client/.test(textContent ?? ""),
  );
  expect(lines).toEqual([false, true]);
  draw([]);
  expect(place.querySelector("details")).toBeNull();
});
