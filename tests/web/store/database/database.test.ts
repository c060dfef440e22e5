import { expect, it, vi } from "vitest";
import { openDatabase, upgrade } from "../../../../web/store/database/database.ts";
import { StoreRefusal } from "../../../../web/store/database/storeRefusal.ts";

/** A database that notes the stores made in it, over one that has the stores named. */
function fakeDatabase(...names: readonly string[]) {
  const made = new Map<string, unknown>();
  const there = new Map(names.map((name) => [name, { name }]));
  const database = {
    createObjectStore: (name: string, options?: { keyPath: unknown }) => made.set(name, options?.keyPath),
  };
  const transaction = { objectStore: (name: string) => there.get(name) };
  const from = (edition: number) =>
    upgrade(database as unknown as IDBDatabase, transaction as unknown as IDBTransaction, edition);
  return { made, there, from };
}

it("makes every store in a new database, those of many entries a job under the job's id first", () => {
  const { made, from } = fakeDatabase();
  from(0);
  expect([...made.keys()].sort()).toEqual([
    "bodies",
    "drafts",
    "handles",
    "heads",
    "journal",
    "lists",
    "tracks",
    "versions",
  ]);
  expect(made.get("versions")).toEqual(["jobId", "number"]);
  expect(made.get("journal")).toEqual(["jobId", "session"]);
});

it("renames the journal of the first edition, and leaves all else in it as it is", () => {
  const { made, there, from } = fakeDatabase("heads", "lastWords");
  from(1);
  expect(there.get("lastWords")?.name).toBe("journal");
  expect(there.get("heads")?.name).toBe("heads");
  expect(made.size).toBe(0);
});

it("refuses in a browser without a database, with a sentence", async () => {
  const opening = openDatabase(() => {});
  await expect(opening).rejects.toThrow(StoreRefusal);
  await expect(opening).rejects.toThrow("no database");
});

it("waits no longer than five seconds for another page that holds the database", async () => {
  vi.useFakeTimers();
  class NeverAnswered extends EventTarget {}
  vi.stubGlobal("IDBRequest", NeverAnswered);
  vi.stubGlobal("indexedDB", { open: () => new NeverAnswered() });
  try {
    const outcome = openDatabase(() => {}).catch((error: unknown) => error);
    await vi.advanceTimersByTimeAsync(4999);
    expect(vi.getTimerCount()).toBe(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(await outcome).toBeInstanceOf(StoreRefusal);
    expect(String(await outcome)).toContain("close the other tabs");
  } finally {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  }
});
