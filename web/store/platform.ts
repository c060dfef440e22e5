import type { JobStore } from "./database/jobStore.ts";
import type { FileHandle } from "./files/linkedFile.ts";

/** What pages tell each other: a job was written, or the list changed some other way. */
export type TabMessage =
  | { readonly kind: "wrote"; readonly id: string; readonly revision: number; readonly session: string }
  | { readonly kind: "list" };

/** Everything the jobs need of the world outside, so that a test can be the world. */
export interface Platform {
  openStore(): Promise<JobStore>;
  now_ms(): number;
  newId(): string;
  /** Calls `then` after a while, unless what comes back is called first. */
  later(wait_ms: number, then: () => void): () => void;
  broadcast(message: TabMessage): void;
  onBroadcast(listener: (message: TabMessage) => void): () => void;
  /** Lets other pages see for how long this session lives. */
  holdSession(session: string): void;
  /** The sessions of pages that are open now; nothing where the browser cannot tell. */
  liveSessions(): Promise<ReadonlySet<string> | undefined>;
  /** The page may be about to go: hidden, closed, put to sleep. */
  onHidden(listener: () => void): () => void;
  /** The page is about to be closed: the person is asked first where `isAtRisk` answers true. */
  onClosing(isAtRisk: () => boolean): () => void;
  /** The page is in front again, perhaps after a long sleep. */
  onShown(listener: () => void): () => void;
  /** Asks the browser to keep the data; nothing where it cannot be asked. */
  askToKeep(): Promise<boolean | undefined>;
  room(): Promise<{ readonly isKept?: boolean; readonly used_MB?: number; readonly room_MB?: number }>;
  /** Puts a text into a file of the person's; `type` as of files, that of a job where none is given. */
  download(name: string, text: string, type?: string): void;
  /** The notebook as one file without a job. */
  pageInOneFile(): Promise<string>;
  /** Lets the person choose a file to link a job to; nothing where they chose none. Missing where the browser cannot. */
  chooseFile?(name: string): Promise<FileHandle | undefined>;
}
