import type { Drafts } from "../../../shared/job/draft.ts";
import type {
  Commit,
  ExternalisedJob,
  FileCopy,
  JobHead,
  JournalEntry,
  Shelf,
  StoredJob,
  Track,
  VersionHead,
} from "./jobRecord.ts";

/** A write that goes ahead only where the job still stands at `expected`. */
export interface JobWrite {
  readonly id: string;
  readonly expected: number;
  readonly session: string;
  readonly step: number;
  readonly now_ms: number;
  readonly drafts: Drafts;
  readonly commit?: Commit;
}

/**
 * How a write went. `stale`: another page wrote in between. `removed`: another page deleted the job. `vanished`: the
 * store knows no such job any more. In these three nothing was written.
 */
export type WriteAnswer =
  | { readonly kind: "written"; readonly head: JobHead }
  | { readonly kind: "stale"; readonly head: JobHead }
  | { readonly kind: "removed"; readonly head: JobHead }
  | { readonly kind: "vanished" };

/** What may change of a job without touching its content. `undefined` takes a field away. */
export interface HeadChange {
  readonly shelf?: Shelf;
  readonly removedAt_ms?: number | undefined;
  readonly openingsSince?: number | undefined;
  readonly note?: string | undefined;
  readonly file?: FileCopy | undefined;
}

export interface HeadList {
  readonly heads: readonly JobHead[];
  /** Records that could not be understood; they are left where they are. */
  readonly unreadable: number;
}

/**
 * Where jobs are kept. Every method is one transaction: it happens wholly or not at all, and two pages cannot meet
 * inside it. A refusal (full, gone, not allowed) rejects with a StoreRefusal.
 */
export interface JobStore {
  readonly kind: "database" | "memory";
  list(): Promise<HeadList>;
  /** The job, or nothing where it is not known; `lists` limits which long lists come along (all of them without it). */
  read(id: string, lists?: ReadonlySet<string>): Promise<StoredJob | undefined>;
  /** Adds a job under a new id; rejects where the id is taken. */
  add(stored: StoredJob): Promise<void>;
  write(write: JobWrite): Promise<WriteAnswer>;
  /** Changes the head without a new revision; returns nothing where the job is not known. */
  amend(id: string, change: HeadChange): Promise<JobHead | undefined>;
  /** Takes a job out for good, with all that hangs on it. */
  erase(id: string): Promise<void>;
  /** Past states, newest first; the present one is in the head. */
  versions(id: string): Promise<readonly VersionHead[]>;
  readVersion(id: string, number: number): Promise<ExternalisedJob | undefined>;
  writeJournal(entry: JournalEntry): Promise<void>;
  journal(): Promise<readonly JournalEntry[]>;
  dropJournal(jobId: string, session: string): Promise<void>;
  putTrack(jobId: string, roadId: string, track: Track): Promise<void>;
  readTrack(jobId: string, roadId: string): Promise<Track | undefined>;
  /** Gives a copied job the same tracks as the original. */
  copyTracks(fromId: string, toId: string): Promise<void>;
  /** The file a job is linked to: what the browser handed out for it, kept as it is. */
  putHandle(jobId: string, handle: unknown): Promise<void>;
  readHandle(jobId: string): Promise<unknown>;
  dropHandle(jobId: string): Promise<void>;
  close(): void;
}
