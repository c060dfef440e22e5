import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { jobText } from "../../../../shared/job/jobText.ts";
import { readJobText } from "../../../../shared/job/readJob.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { withEntry } from "../../../../web/editing/listEdits.ts";
import { namedFigures, numberedFigures, withNames, withNumbers } from "../../../../web/notebook/notes/figureNames.ts";
import { sections } from "../../../../web/sections/index.ts";
import type { Values } from "../../../../web/sections/parts/values.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { drawing } from "../../../support/drawing.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

/** The figures of the whole page, as they stand for these values. */
function figuresOn(values: Values, hidden: readonly string[] = []) {
  const bySection = sections.map((section) => {
    const worked = [...section.plot(section.compute(values as never) as never, drawing(640))];
    const figures = worked.flatMap((each) => ("chart" in each ? [each] : []));
    return { figures: namedFigures(section.name, figures), isHidden: hidden.includes(section.name) };
  });
  return numberedFigures(bySection);
}

/** An editor with a job that has an empty note to the verdict. */
function deskWithNote(job: Job) {
  const jobEditor = createJobEditor({ job, drafts: {} });
  const note = { after: "whichIsEnough", text: "" };
  expect(jobEditor.change("A note", (state) => withEntry(state, "notes", 0, note))).toEqual([]);
  return jobEditor;
}

describe.each(demos.map(({ id }, which) => [id, which] as const))("the figures of %s", (_, which) => {
  const figures = figuresOn(sectionValues(demoJob(which)));

  it("have one name each, of letters, digits and points", () => {
    expect(figures.length).toBeGreaterThanOrEqual(9);
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
    for (const { id } of figures) expect(id).toMatch(/^[A-Za-z0-9]+(\.[A-Za-z0-9]+)?$/);
  });

  it("are each found again by the number that a note names them by", () => {
    for (const { id, number } of figures) {
      const kept = withNames(`See Figure ${number}.`, figures);
      expect(kept).toBe(`See {Figure ${id}}.`);
      expect(withNumbers(kept, figures)).toBe(`See Figure ${number}.`);
    }
  });
});

describe("a note in the job", () => {
  const values = sectionValues(demoJob());
  const before = figuresOn(values);
  const verdict = before.find(({ id }) => id === "whichIsEnough");
  const typed = `The bars of Figure ${verdict?.number} settled it.`;

  it("goes on naming its figure when a chart more stands above it, and when one goes", () => {
    const kept = withNames(typed, before);
    const more = figuresOn({ ...values, charts: [...values.charts, { x: "time", y: "soc", packs: [], caption: "" }] });
    const fewer = figuresOn({ ...values, charts: [] });
    expect(withNumbers(kept, more)).toBe(`The bars of Figure ${(verdict?.number ?? 0) + 1} settled it.`);
    expect(withNumbers(kept, fewer)).toBe(
      `The bars of Figure ${(verdict?.number ?? 0) - values.charts.length} settled it.`,
    );
  });

  it("is taken back and done again as it was typed", () => {
    const jobEditor = deskWithNote(demoJob());
    jobEditor.editPlain("notes.0.text", withNames(typed, before), "Note");
    jobEditor.settle();
    jobEditor.editPlain("notes.0.text", "", "Note");
    const shown = () => withNumbers(jobEditor.job.value.notes[0].text, before);
    jobEditor.undo();
    expect(shown()).toBe(typed);
    jobEditor.undo();
    expect(shown()).toBe("");
    jobEditor.redo();
    expect(shown()).toBe(typed);
  });

  it("comes back from a job file with its figures, and can be read in the file", () => {
    const jobEditor = deskWithNote(demoJob());
    jobEditor.editPlain("notes.0.text", withNames(typed, before), "Note");
    const text = jobText(jobEditor.job.value);
    expect(text).toContain("The bars of {Figure whichIsEnough} settled it.");
    const { notes } = readJobText(text, "file");
    expect(notes).toEqual(jobEditor.job.value.notes);
    expect(withNumbers(notes[0].text, before)).toBe(typed);
  });

  it("of an older file, with a bare number, still reads", () => {
    const job = { ...demoJob(), notes: [{ after: "whichIsEnough", text: typed }] };
    expect(withNumbers(readJobText(jobText(job), "file").notes[0].text, before)).toBe(typed);
  });
});
