import { type ReadonlySignal, signal } from "@preact/signals-core";
import { fetchPart } from "../../worker/fetchPart.ts";
import type { NumberedFigure } from "./figureNames.ts";

/** Makes a piece of page of a note's Markdown: what cannot be trusted taken out, figures named in it turned to links. */
export type NoteReader = (text: string, figures: readonly NumberedFigure[]) => DocumentFragment;

const opened = signal<NoteReader | undefined>(undefined);
let isAskedFor = false;

/**
 * The reader of notes, nothing until it has come: few jobs have a note, so it is fetched when the first one is shown.
 * Where it cannot be fetched the notes stand as they were typed.
 */
export function noteReader(): ReadonlySignal<NoteReader | undefined> {
  if (!isAskedFor) {
    isAskedFor = true;
    fetchPart(() => import("./readNote.ts")).then(
      ({ createNoteReader }) => {
        opened.value = createNoteReader(window);
      },
      () => {
        isAskedFor = false;
      },
    );
  }
  return opened;
}
