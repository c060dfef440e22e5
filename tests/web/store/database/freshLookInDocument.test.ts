import { JSDOM } from "jsdom";
import { afterEach, expect, it, vi } from "vitest";
import { DATABASE_NAME, DATABASE_VERSION } from "../../../../web/store/database/database.ts";
import { freshLook } from "../../../../web/store/database/freshLook.ts";
import type { JournalEntry } from "../../../../web/store/database/jobRecord.ts";

afterEach(() => vi.unstubAllGlobals());

/** A request that is answered with this a moment later. */
function request(result: unknown): IDBRequest {
  const made = { result } as { result: unknown; onsuccess?: () => void };
  queueMicrotask(() => made.onsuccess?.());
  return made as unknown as IDBRequest;
}

/** A page whose frames have a database with one handle in it. */
function page() {
  const { document } = new JSDOM("<!doctype html><html></html>").window;
  const journal: unknown[] = [];
  const opened: unknown[] = [];
  const close = vi.fn();
  const commit = vi.fn();
  const stores: Readonly<Record<string, object>> = {
    handles: { get: (key: string) => request(key === "j1" ? { name: "s.json" } : undefined) },
    journal: { put: (entry: unknown) => request(journal.push(entry)) },
  };
  const transaction = () => ({ objectStore: (name: string) => stores[name], commit });
  const open = (...asked: readonly unknown[]) => {
    opened.push(asked);
    return request({ transaction, close });
  };
  const make = document.createElement.bind(document);
  vi.spyOn(document, "createElement").mockImplementation((name: string) => {
    const frame = make(name);
    Object.defineProperty(frame, "contentWindow", { value: { indexedDB: { open } } });
    return frame;
  });
  vi.stubGlobal("document", document);
  return { document, journal, opened, close, commit };
}

it("has no look where there is no document, or where a fresh one has no database", async () => {
  vi.stubGlobal("document", undefined);
  expect(await freshLook()).toBeUndefined();
  const { document } = new JSDOM("<!doctype html><html></html>").window; // whose frames have no database
  vi.stubGlobal("document", document);
  expect(await freshLook()).toBeUndefined();
  expect(document.querySelector("iframe")).toBeNull();
});

it("opens the jobs' database from a frame that nobody sees, and takes it away again", async () => {
  const { document, opened, close } = page();
  const look = await freshLook();
  expect(opened).toEqual([[DATABASE_NAME, DATABASE_VERSION]]);
  expect(document.querySelector("iframe")?.hidden).toBe(true);
  look?.close();
  expect(close).toHaveBeenCalledTimes(1);
  expect(document.querySelector("iframe")).toBeNull();
});

it("says whether a handle is there, and writes the journal at once", async () => {
  const { journal, commit } = page();
  const look = await freshLook();
  expect([await look?.hasHandle("j1"), await look?.hasHandle("j2")]).toEqual([true, false]);
  const entry = { jobId: "j1", session: "a", step: 1 } as unknown as JournalEntry;
  await look?.writeJournal(entry);
  expect(journal).toEqual([entry]);
  expect(commit).toHaveBeenCalledTimes(1);
});
