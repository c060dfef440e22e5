import { DATABASE_NAME, DATABASE_VERSION, upgrade } from "./database.ts";
import type { JournalEntry } from "./jobRecord.ts";

/** The jobs' database as a page sees it that is opened now. */
export interface FreshLook {
  hasHandle(key: string): Promise<boolean>;
  writeJournal(entry: JournalEntry): Promise<void>;
  close(): void;
}

/**
 * Opens the database from a fresh empty document inside this one. When somebody clears a site's data, some browsers
 * leave the pages that are open with a storage of their own, which takes everything and is gone at the next reload; a
 * fresh document gets the storage that the next page will get. Returns nothing where no such document can be made.
 * Written on the bare interface of the browser, since the promises of the database package know only this document's.
 */
export async function freshLook(): Promise<FreshLook | undefined> {
  if (typeof document === "undefined") return undefined;
  const frame = document.createElement("iframe");
  frame.hidden = true;
  frame.title = "storage";
  document.documentElement.append(frame);
  const factory = frame.contentWindow?.indexedDB;
  if (!factory) {
    frame.remove();
    return undefined;
  }
  const request = factory.open(DATABASE_NAME, DATABASE_VERSION);
  request.onupgradeneeded = ({ oldVersion }) => {
    if (request.transaction) upgrade(request.result, request.transaction, oldVersion);
  };
  const database = await answer(request);
  database.onversionchange = () => database.close();
  return {
    hasHandle: async (key) =>
      (await answer(database.transaction("handles", "readonly").objectStore("handles").get(key))) !== undefined,
    async writeJournal(entry) {
      const tx = database.transaction("journal", "readwrite");
      const put = answer(tx.objectStore("journal").put(entry));
      tx.commit();
      await put;
    },
    close() {
      database.close();
      frame.remove();
    },
  };
}

function answer<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
