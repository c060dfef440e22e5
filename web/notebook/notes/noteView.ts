import type { ReadonlySignal } from "@preact/signals-core";
import { html, nothing, type TemplateResult } from "lit-html";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Editing } from "../../fields/fieldContext.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import { type NumberedFigure, withNumbers } from "./figureNames.ts";
import { noteEditor } from "./noteEditor.ts";
import { noteReader } from "./noteReader.ts";

/** The note as it is read: its Markdown set out, or its plain text until the reader of Markdown has come. */
function asRead(text: string, figures: readonly NumberedFigure[]): TemplateResult | typeof nothing {
  if (text.trim() === "") return nothing;
  return html`<div class="note-read">${noteReader().value?.(text, figures) ?? html`<p>${withNumbers(text, figures)}</p>`}</div>`;
}

/** One note of the job's list: as it is read, the field it is written in, and the way to take it out. */
function oneNote(context: Editing, index: number, to: string, figures: readonly NumberedFigure[]): TemplateResult {
  const { jobEditor } = context;
  const remove = () => jobEditor.change(`Note to ${to} removed`, (state) => withoutEntry(state, "notes", index));
  return html`<div class="note">
      ${noteEditor(context, index, `Note to ${to}`, figures)}
      ${asRead(jobEditor.job.value.notes[index]?.text ?? "", figures)}
    </div>
    <p class="buttons section-tools">
      <button type="button" @click=${remove}>Take the note out<span class="unseen"> of ${to}</span></button>
    </p>`;
}

/**
 * What stands below a section beside its finding: the workshop's notes, and whether the client sees the section. A note
 * is a field of the job like any other; its place in the list of notes is found by the section it follows.
 */
export function noteView(
  section: AnySection,
  context: Editing,
  figures: ReadonlySignal<readonly NumberedFigure[]>,
): TemplateResult {
  const { jobEditor } = context;
  const { notes, hiddenSections } = jobEditor.job.value;
  const own = notes.flatMap(({ after }, index) => (after === section.name ? [index] : []));
  const isHidden = hiddenSections.includes(section.name);
  const add = () =>
    jobEditor.change(`A note to ${section.title}`, (state) =>
      withEntry(state, "notes", state.job.notes.length, { after: section.name, text: "" }),
    );
  const hide = () =>
    jobEditor.change(`${section.title}: ${isHidden ? "shown to" : "hidden from"} the client`, ({ job, drafts }) => ({
      job: {
        ...job,
        hiddenSections: isHidden
          ? hiddenSections.filter((name) => name !== section.name)
          : [...hiddenSections, section.name],
      },
      drafts,
    }));
  return html`${own.map((index, i) => oneNote(context, index, numbered(section.title, i, own.length), figures.value))}
    <p class="buttons section-tools">
      ${
        own.length === 0
          ? html`<button type="button" @click=${add}>Write a note<span class="unseen"> to ${section.title}</span></button>`
          : nothing
      }
      <button type="button" aria-pressed=${isHidden ? "true" : "false"} @click=${hide}>
        Hide from client<span class="unseen"> – ${section.title}</span>
      </button>
    </p>`;
}

/** Notes that follow no section of this page: of another edition of it, or written by hand into the file. None is left out. */
export function otherNotesView(
  sections: readonly AnySection[],
  context: Editing,
  figures: ReadonlySignal<readonly NumberedFigure[]>,
): TemplateResult | typeof nothing {
  const { notes } = context.jobEditor.job.value;
  const names = new Set(sections.map(({ name }) => name));
  const others = notes.flatMap(({ after }, index) => (names.has(after) ? [] : [index]));
  if (others.length === 0) return nothing;
  return html`<h2>Further notes</h2>
    ${others.map((index, i) => oneNote(context, index, numbered("a part that this page does not have", i, others.length), figures.value))}`;
}

function numbered(title: string, i: number, count: number): string {
  return count === 1 ? title : `${title}, ${i + 1} of ${count}`;
}
