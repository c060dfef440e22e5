import { type ReadonlySignal, signal } from "@preact/signals-core";
import { fetchPart } from "../../worker/fetchPart.ts";
import type { NumberedFigure } from "./figureNames.ts";

/** Makes a piece of page of a note's Markdown: what cannot be trusted taken out, figures named in it turned to links. */
export type NoteReader = (text: string, figures: readonly NumberedFigure[]) => DocumentFragment;

const opened = signal<NoteReader | undefined>(undefined);
let coming: Promise<void> | undefined;

/**
 * The reader of notes, nothing until it has come: few jobs have a note, so it is fetched when the first one is shown.
 * Where it cannot be fetched the notes stand as they were typed.
 */
export function noteReader(): ReadonlySignal<NoteReader | undefined> {
  coming ??= fetchPart(() => import("./readNote.ts")).then(
    ({ createNoteReader }) => {
      opened.value = createNoteReader(window);
    },
    () => {
      coming = undefined;
    },
  );
  return opened;
}

/** Resolves once notes stand as they are read, where any is shown. */
export async function notesRead(): Promise<void> {
  await coming;
}
