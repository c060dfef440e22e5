import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import type { Drafts } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import type { Road } from "../../shared/job/schema/road.ts";
import type { Problem } from "../../shared/problems.ts";
import { checkJob } from "./checkJob.ts";
import { type About, edited } from "./editField.ts";
import { withStaged } from "./stagedTexts.ts";

/** All that an undo brings back. */
export interface EditorState {
  readonly job: Job;
  readonly drafts: Drafts;
}

interface History {
  readonly past: readonly Step[];
  readonly present: EditorState;
  readonly future: readonly Step[];
}

interface Step {
  readonly state: EditorState;
  /** What was changed from or to this state, in the words of its field. */
  readonly what: string;
}

/** The job being edited: the one document that the page shows, and every way to change it. */
export interface JobEditor {
  /** What the page shows: the job as it is, or the earlier version of it that is looked at. */
  readonly job: ReadonlySignal<Job>;
  readonly drafts: ReadonlySignal<Drafts>;
  /** The job as it is with its drafts, whatever is looked at: what is kept. */
  readonly kept: ReadonlySignal<EditorState>;
  /** Grows each time another job is opened: what is on the page beside the job belongs to the one before, and goes. */
  readonly opened: ReadonlySignal<number>;
  /**
   * The text in the field that is being typed in: shown as it is, and not yet corrected. It belongs to the state that it is
   * typed into, so that it goes when another state takes that one's place.
   */
  readonly typing: Signal<{ readonly path: string; readonly text: string } | undefined>;
  /** An earlier version is looked at. No edit is taken then, and none can be taken back. */
  readonly isLooking: ReadonlySignal<boolean>;
  /** What the next undo takes back and the next redo does again; undefined where there is none. */
  readonly undoes: ReadonlySignal<string | undefined>;
  readonly redoes: ReadonlySignal<string | undefined>;
  /** What the last step was, for the list of versions. */
  readonly latest: ReadonlySignal<string>;
  /** Puts a value into a field; `from` says where it comes from. A value that does not fit stays as a draft. */
  edit(path: string, typed: string, value: unknown, about: About): void;
  /** Puts in words, a choice or a yes or no, of which nobody asks where they come from. */
  editPlain(path: string, value: string | boolean, what: string): void;
  /** Keeps a text that could not be read in its field, with the sentence that says why. */
  keepDraft(path: string, typed: string, problem: string, what: string): void;
  /** Keeps the texts of fields whose drafts begin with `prefix` and that are of nothing in the job yet; see stagedTexts. */
  stage(prefix: string, texts: Readonly<Record<string, string>>, what: string): void;
  /** Any other change of the job, such as a pack more; `checked` as in `checkJob`. Returns the problems if it was refused. */
  change(what: string, how: (state: EditorState) => EditorState, checked?: readonly Road[]): readonly Problem[];
  /** Ends a run of edits in one field, so that the next one there is a step of its own. */
  settle(): void;
  undo(): string | undefined;
  redo(): string | undefined;
  /** Another job takes the place of this one; what was done to the old one cannot be undone here. */
  open(state: EditorState): void;
  /** The same job arrives as another page left it; what was done to it here cannot be undone. */
  refresh(state: EditorState): void;
  /** Another state of the same job takes the place of this one, as a step that can be taken back. */
  replace(state: EditorState, what: string): void;
  /** Shows an earlier version in place of the job, to be looked at only; with nothing, the job again. */
  look(earlier: Job | undefined): void;
}

/** Steps kept; older ones fall off. */
const KEPT = 500;

const noDrafts: Drafts = {};

const onlyLooked: Problem = {
  code: "onlyLooked",
  where: "job",
  message: "found an earlier version of the job, which is only looked at; go back to the job as it is now to change it",
};

export function createJobEditor(first: EditorState): JobEditor {
  const history = signal<History>({ past: [], present: first, future: [] });
  const state = computed(() => history.value.present);
  const looked = signal<Job | undefined>(undefined);
  const latest = signal("opened");
  const opened = signal(1);
  const typing = signal<{ readonly path: string; readonly text: string } | undefined>(undefined);
  let openField: string | undefined; // successive edits in one field make one step

  const put = (present: EditorState, what: string, field?: string) => {
    const { past, present: before } = history.peek();
    const isSameStep = field !== undefined && field === openField && past.length > 0;
    const kept = isSameStep ? past : [...past.slice(1 - KEPT), { state: before, what }];
    openField = field;
    batch(() => {
      latest.value = what;
      history.value = { past: kept, present, future: [] };
    });
  };

  /**
   * What an edit of a field starts from: the state before the run of edits in it. The 1 on the way to a 1e99 is no value
   * that anybody gave, so that what stood there before stands again once the text can no longer be taken.
   */
  const base = (path: string): EditorState => {
    const { past, present } = history.peek();
    return (path === openField ? past.at(-1)?.state : undefined) ?? present;
  };

  const step = (from: "past" | "future"): string | undefined => {
    if (looked.peek()) return undefined;
    const { past, present, future } = history.peek();
    const taken = from === "past" ? past.at(-1) : future.at(-1);
    if (!taken) return undefined;
    openField = undefined;
    const here = { state: present, what: taken.what };
    batch(() => {
      typing.value = undefined;
      latest.value = `${from === "past" ? "undone" : "redone"}: ${taken.what}`;
      history.value =
        from === "past"
          ? { past: past.slice(0, -1), present: taken.state, future: [...future, here] }
          : { past: [...past, here], present: taken.state, future: future.slice(0, -1) };
    });
    return taken.what;
  };

  const arrive = (present: EditorState) => {
    openField = undefined;
    batch(() => {
      latest.value = "opened";
      typing.value = undefined;
      history.value = { past: [], present, future: [] };
    });
  };

  return {
    job: computed(() => looked.value ?? state.value.job),
    drafts: computed(() => (looked.value ? noDrafts : state.value.drafts)),
    kept: state,
    isLooking: computed(() => looked.value !== undefined),
    undoes: computed(() => (looked.value ? undefined : history.value.past.at(-1)?.what)),
    redoes: computed(() => (looked.value ? undefined : history.value.future.at(-1)?.what)),
    latest,
    opened,
    typing,
    edit(path, typed, value, about) {
      if (!looked.peek()) put(edited(base(path), path, typed, value, about), about.what, path);
    },
    editPlain(path, value, what) {
      if (!looked.peek()) put(edited(base(path), path, String(value), value), what, path);
    },
    keepDraft(path, typed, problem, what) {
      if (looked.peek()) return;
      const { job, drafts } = base(path);
      put({ job, drafts: { ...drafts, [path]: { typed, problem } } }, what, path);
    },
    stage(prefix, texts, what) {
      if (looked.peek()) return;
      const before = state.peek();
      const after = withStaged(before, prefix, texts);
      const keys = new Set([...Object.keys(before.drafts), ...Object.keys(after.drafts)]);
      const changed = [...keys].filter((key) => before.drafts[key] !== after.drafts[key]);
      if (changed.length > 0) put(after, what, changed.length === 1 ? changed[0] : undefined);
    },
    change(what, how, checked = []) {
      if (looked.peek()) return [onlyLooked];
      const before = state.peek();
      const after = how(before);
      const held = checkJob(after.job, before.job, checked);
      if (!held.ok) return held.problems;
      put({ job: held.job, drafts: after.drafts }, what);
      return [];
    },
    settle: () => {
      openField = undefined;
    },
    undo: () => step("past"),
    redo: () => step("future"),
    open: (present) =>
      batch(() => {
        opened.value += 1;
        looked.value = undefined;
        arrive(present);
      }),
    refresh: arrive,
    replace(present, what) {
      batch(() => {
        looked.value = undefined;
        typing.value = undefined;
        put(present, what);
      });
    },
    look(earlier) {
      openField = undefined;
      batch(() => {
        typing.value = undefined;
        looked.value = earlier;
      });
    },
  };
}
