import type { Draft } from "../../shared/job/draft.ts";
import type { EditorState, JobEditor } from "./jobEditor.ts";

/** Texts in fields that are no part of the job yet, by field: read and written whole. An empty text is kept, a missing one is gone. */
export interface StagedTexts {
  value: Readonly<Record<string, string>>;
}

/** Beginnings of the keys that staged texts have among the drafts. No field of the job has such a path. */
const prefixOf = (place: string) => `staged.${place}.`;

/**
 * The texts staged at one place of the page, such as figures of a datasheet not taken yet. They are kept with the job's
 * drafts, so that they are stored as typed, undone, and shown in no other job. `what` is their name in the undo.
 */
export function stagedTexts(jobEditor: JobEditor, place: string, what: string): StagedTexts {
  const prefix = prefixOf(place);
  return {
    get value() {
      const own: Record<string, string> = {};
      for (const [key, { typed }] of Object.entries(jobEditor.drafts.value)) {
        if (key.startsWith(prefix)) own[key.slice(prefix.length)] = typed;
      }
      return own;
    },
    set value(next) {
      jobEditor.stage(prefix, next, what);
    },
  };
}

/** The state with other texts at one place. */
export function withStaged(state: EditorState, prefix: string, texts: Readonly<Record<string, string>>): EditorState {
  const drafts: Record<string, Draft> = {};
  for (const [key, draft] of Object.entries(state.drafts)) if (!key.startsWith(prefix)) drafts[key] = draft;
  for (const [key, typed] of Object.entries(texts)) {
    const before = state.drafts[prefix + key];
    drafts[prefix + key] = before?.typed === typed ? before : { typed };
  }
  return { job: state.job, drafts };
}

/** The state without the texts of one place: they have gone into the job. */
export function withoutStaged(state: EditorState, place: string): EditorState {
  return withStaged(state, prefixOf(place), {});
}
