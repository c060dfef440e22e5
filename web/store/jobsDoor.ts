import type { ReadonlySignal } from "@preact/signals-core";
import type { Draft } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import type { FileCopy, JobHead, Track, VersionHead } from "./database/jobRecord.ts";
import type { Reminder } from "./files/fileReminder.ts";
import type { LinkState } from "./files/linkedFile.ts";
import type { FileLike } from "./files/readJobFile.ts";
import type { Conflict, CurrentJob } from "./openJob.ts";
import type { Recovered } from "./recoverUnsaved.ts";
import type { Place, SaveStatus } from "./saveStatus.ts";
import type { Difference } from "./versions/jobDiff.ts";

/** A state of a job that can be looked at and restored. */
export interface JobVersion extends VersionHead {
  readonly isPresent: boolean;
}

/** What `compare` may be given: a stored job, one of its versions, or a job in hand. */
export type Comparable = { readonly id: string; readonly version?: number } | { readonly job: Job };

/** What can be asked of the storage of jobs. */
export interface Jobs {
  readonly list: ReadonlySignal<readonly JobHead[]>;
  readonly current: ReadonlySignal<CurrentJob | undefined>;
  readonly status: ReadonlySignal<SaveStatus>;
  readonly place: ReadonlySignal<Place>;
  readonly conflict: ReadonlySignal<Conflict | undefined>;
  readonly reminder: ReadonlySignal<Reminder | undefined>;
  readonly fileLink: ReadonlySignal<LinkState>;
  /** One sentence about something that happened without the person asking, such as a state taken from another tab. */
  readonly news: ReadonlySignal<string | undefined>;
  /** What earlier pages left unsaved and was brought back when this one opened. */
  readonly recovered: readonly Recovered[];
  /** Whether this browser can link a job to a file. */
  readonly canLinkFile: boolean;
  /**
   * Opens a stored job and leaves the one before. Throws InputError where what is stored cannot be read, and where the
   * one before has edits that could neither be stored nor were saved as a file.
   */
  open(id: string): Promise<Job>;
  /** Adds a job and opens it; `from` says how it came about ("the demo roadster"). Returns its id. */
  create(job: Job, from: string, file?: FileCopy): Promise<string>;
  saveDraft(path: string, draft: Draft): void;
  dropDraft(path: string): void;
  /** Takes in an edit with its reason line; `settled` names drafts that it makes superfluous. */
  commit(job: Job, reason: string, settled?: readonly string[]): void;
  flush(): Promise<void>;
  versions(id: string): Promise<readonly JobVersion[]>;
  readVersion(id: string, number: number): Promise<Job>;
  /** Puts a version back as the newest state; what it replaces becomes a version itself. */
  restore(id: string, number: number): Promise<void>;
  /** Copies a job and opens the copy, so that what is typed next goes into it and not into the original. */
  duplicate(id: string): Promise<string>;
  /** A job as text, as far as it can be had: also one that no reader of jobs takes any more. */
  readText(id: string): Promise<string>;
  archive(id: string): Promise<void>;
  unarchive(id: string): Promise<void>;
  remove(id: string): Promise<void>;
  /** Brings a removed job back: the one named, or the last that was removed on this page. */
  undoRemove(id?: string): Promise<string | undefined>;
  /** Saves a job as a file, the open one where none is named; works when the database does not. */
  exportFile(id?: string): Promise<{ readonly name: string; readonly text: string }>;
  /** Saves the open job as a page in one file, to be sent to the client. */
  share(): Promise<void>;
  /** Adds the job in a file and opens it. Throws InputError with all that is wrong; the open job is then untouched. */
  importFile(file: FileLike & { readonly lastModified?: number }): Promise<string>;
  /** Lets the person choose a file that the open job is saved along to. Needs a click. */
  linkFile(): Promise<void>;
  unlinkFile(): Promise<void>;
  /** Asks for permission again. Needs a click. */
  allowFile(): Promise<void>;
  /** Writes over a linked file that was changed outside. */
  overwriteFile(): Promise<void>;
  compare(before: Comparable, after: Comparable): Promise<Difference[]>;
  keepMine(): void;
  takeTheirs(): Promise<void>;
  dismissNews(): void;
  putTrack(roadId: string, track: Track): Promise<void>;
  readTrack(roadId: string): Promise<Track | undefined>;
  close(): void;
}
