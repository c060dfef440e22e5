import type { ReadonlySignal } from "@preact/signals-core";
import { html, nothing, type TemplateResult } from "lit-html";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { FieldContext } from "../../fields/fieldContext.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import { type NumberedFigure, withNumbers } from "./figureNames.ts";
import { noteEditor } from "./noteEditor.ts";
import { noteReader } from "./noteReader.ts";

/** The note as it is read: its Markdown set out, or its plain text until the reader of Markdown has come. */
function asRead(text: string, figures: readonly NumberedFigure[]): TemplateResult | typeof nothing {
  if (text.trim() === "") return nothing;
  return html`<div class="note-read">${noteReader().value?.(text, figures) ?? html`<p>${withNumbers(text, figures)}</p>`}</div>`;
}

/**
 * What stands below a section beside its finding: the workshop's note, and whether the client sees the section. A note
 * is a field of the job like any other; its place in the list of notes is found by the section it follows.
 */
export function noteView(
  section: AnySection,
  context: FieldContext,
  figures: ReadonlySignal<readonly NumberedFigure[]>,
): TemplateResult {
  const { jobEditor } = context;
  const { notes, hiddenSections } = jobEditor.job.value;
  const index = notes.findIndex(({ after }) => after === section.name);
  const isHidden = hiddenSections.includes(section.name);
  const add = () =>
    jobEditor.change(`A note to ${section.title}`, (state) =>
      withEntry(state, "notes", state.job.notes.length, { after: section.name, text: "" }),
    );
  const remove = () =>
    jobEditor.change(`Note to ${section.title} taken out`, (state) => withoutEntry(state, "notes", index));
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
  return html`${
    index < 0
      ? nothing
      : html`<div class="note">
          ${noteEditor(context, index, `Note to ${section.title}`, figures.value)}
          ${asRead(notes[index].text, figures.value)}
        </div>`
  }
    <p class="buttons section-tools">
      ${
        index < 0
          ? html`<button type="button" @click=${add}>Write a note<span class="unseen"> to ${section.title}</span></button>`
          : html`<button type="button" @click=${remove}>
            Take the note out<span class="unseen"> of ${section.title}</span>
          </button>`
      }
      <button type="button" aria-pressed=${isHidden ? "true" : "false"} @click=${hide}>
        Not for the client<span class="unseen"> – ${section.title}</span>
      </button>
    </p>`;
}
