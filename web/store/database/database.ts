import { type DBSchema, type IDBPDatabase, openDB, unwrap } from "idb";
import type { Drafts } from "../../../shared/job/draft.ts";
import type { JobHead, JournalEntry, Track, VersionHead } from "./jobRecord.ts";
import { StoreRefusal, toRefusal } from "./storeRefusal.ts";

export const DATABASE_NAME = "bellhousing";

/** Raised with every change of the stores below; a step for it goes into `upgrade`. */
export const DATABASE_VERSION = 2;

/** How long opening may wait for another page that holds an older edition of the database open. */
const PATIENCE_ms = 5000;

/** The database's stores. Content and drafts lie apart, so that a keystroke does not write the whole job. */
export interface JobSchema extends DBSchema {
  heads: { key: string; value: JobHead };
  bodies: { key: string; value: { readonly id: string; readonly frame: unknown } };
  drafts: { key: string; value: { readonly id: string; readonly drafts: Drafts } };
  versions: {
    key: [string, number];
    value: { readonly jobId: string; readonly number: number; readonly head: VersionHead; readonly frame: unknown };
  };
  lists: { key: [string, string]; value: Float64Array };
  journal: { key: [string, string]; value: JournalEntry };
  tracks: { key: [string, string]; value: Track };
  handles: { key: string; value: unknown };
}

/** Brings a database of edition `from`, 0 where it is new, to the present one; called in the transaction of its upgrade. */
export function upgrade(database: IDBDatabase, transaction: IDBTransaction, from: number): void {
  if (from === 0) makeStores(database);
  // The first edition had another name for the journal.
  if (from === 1) transaction.objectStore("lastWords").name = "journal";
}

function makeStores(database: IDBDatabase): void {
  database.createObjectStore("heads", { keyPath: "id" });
  database.createObjectStore("bodies", { keyPath: "id" });
  database.createObjectStore("drafts", { keyPath: "id" });
  database.createObjectStore("versions", { keyPath: ["jobId", "number"] });
  database.createObjectStore("lists");
  database.createObjectStore("journal", { keyPath: ["jobId", "session"] });
  database.createObjectStore("tracks");
  database.createObjectStore("handles");
}

/**
 * Opens the jobs' database, making it where there is none. Throws StoreRefusal where the browser has none (private
 * windows of some browsers), where a newer edition of the program made it, where another page blocks it, or where the
 * browser says anything else. `onLost` is called when the connection goes later on: data cleared, newer edition opened.
 */
export async function openDatabase(onLost: () => void): Promise<IDBPDatabase<JobSchema>> {
  if (typeof indexedDB === "undefined" || indexedDB === null) {
    throw new StoreRefusal("failed", "this browser has no database");
  }
  let givenUp = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const opening = openDB<JobSchema>(DATABASE_NAME, DATABASE_VERSION, {
    upgrade: (database, from, _to, transaction) => upgrade(unwrap(database), unwrap(transaction), from),
    // A newer edition, or somebody clearing the data, waits for us to let go.
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      onLost();
    },
    terminated: onLost,
  });
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      givenUp = true;
      reject(new StoreRefusal("failed", "another tab keeps the database to itself, close the other tabs of this page"));
    }, PATIENCE_ms);
  });
  // An answer after the patience ended would leave a connection that nobody uses and that blocks others.
  opening.then((database) => givenUp && database.close()).catch(() => {});
  try {
    return await Promise.race([opening, late]);
  } catch (error) {
    throw toRefusal(error);
  } finally {
    clearTimeout(timer);
  }
}
