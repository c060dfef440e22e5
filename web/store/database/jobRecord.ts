import type { Drafts } from "../../../shared/job/draft.ts";

/** Where a job stands in the list. A removed job can be brought back until it is erased. */
export type Shelf = "open" | "archived" | "removed";

/** The last copy of a job on disk. */
export interface FileCopy {
  readonly name: string;
  readonly savedAt_ms: number;
  /** How many edits the job had seen by then. */
  readonly editCount: number;
  /** The file's own date after it was written, for a file linked to the job: another date means somebody else wrote it. */
  readonly fileDate_ms?: number;
}

/** What the list of jobs shows of one, and what decides whether a write may go ahead. Moments are ms since 1970. */
export interface JobHead {
  readonly id: string;
  /** Grows by one at every write of the job or its drafts; a write must name the one it builds on. */
  readonly revision: number;
  readonly title: string;
  /** One line that tells the job from others. */
  readonly line: string;
  /** Why this copy exists, where it was not made by hand. */
  readonly note?: string;
  readonly shelf: Shelf;
  readonly madeAt_ms: number;
  readonly changedAt_ms: number;
  readonly removedAt_ms?: number;
  /** How often a page was opened since it was removed: a clock that was set wrong says little of how long ago that was. */
  readonly openingsSince?: number;
  /** The session (one page, from load to close) that wrote last, and the step of its own count it wrote. */
  readonly writer: string;
  readonly writerStep: number;
  readonly editCount: number;
  /** The present state as a version: its number, when it began, its edits so far, and the reason of the last. */
  readonly version: VersionHead;
  readonly file?: FileCopy;
}

/** One state of a job: edits without a pause between them make one. */
export interface VersionHead {
  readonly number: number;
  readonly startedAt_ms: number;
  readonly endedAt_ms: number;
  /** Reason of the last edit in it, such as "load 150 kg to 180 kg". */
  readonly reason: string;
  readonly edits: number;
}

/** A job document with its long lists of numbers (recorded roads) taken out, each under the key of its content. */
export interface ExternalisedJob {
  readonly frame: unknown;
  readonly lists: ReadonlyMap<string, Float64Array>;
}

export interface StoredJob {
  readonly head: JobHead;
  readonly job: ExternalisedJob;
  readonly drafts: Drafts;
}

/** What an edit adds to a write that carries the job, not only drafts. */
export interface Commit {
  readonly job: ExternalisedJob;
  readonly title: string;
  readonly line: string;
  readonly reason: string;
  /** Edits since the last write that came through. */
  readonly edits: number;
  /** Starts a version whatever the clock says: a restore, a state taken from elsewhere. */
  readonly isMilestone: boolean;
}

/**
 * What a page had not saved yet, written at every keystroke without looking at anything else, so that it is stored even
 * if the page dies in the next moment. Folded into the job by the next save, or by the next page that opens.
 */
export interface JournalEntry {
  readonly jobId: string;
  readonly session: string;
  /** Counts the session's edits; a save that carries this step or a later one makes this entry superfluous. */
  readonly step: number;
  /** The revision that was built on. */
  readonly base: number;
  readonly at_ms: number;
  readonly drafts: Drafts;
  readonly commit?: Commit;
}

/** Positions of a recorded log. They stay in the database: a job file may be sent to anybody. */
export interface Track {
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
  /** Rows at which a trip begins; a map cuts its ends there. */
  readonly tripRows?: readonly number[];
}
