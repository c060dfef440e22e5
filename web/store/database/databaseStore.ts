// Past 150 lines, since every method is one transaction over the same stores: how they agree is seen only side by side.
import type { IDBPDatabase } from "idb";
import { type JobSchema, openDatabase } from "./database.ts";
import { type FreshLook, freshLook } from "./freshLook.ts";
import type { JobStore } from "./jobStore.ts";
import { isHead } from "./readHead.ts";
import { StoreRefusal, toRefusal } from "./storeRefusal.ts";
import { rangeOf, type Store, type Transaction, withLists, writeIn } from "./writeIn.ts";
import { amendHead } from "./writePlan.ts";

const ofOneJob: readonly Store[] = ["versions", "lists", "journal", "tracks"];
const content: Store[] = ["heads", "bodies", "drafts", "lists"];
const everything: Store[] = ["heads", "bodies", "drafts", "versions", "lists", "journal", "tracks", "handles"];

/**
 * The store over the browser's database. Rejects with StoreRefusal where the database cannot be opened. A connection
 * lost later (data cleared by hand) is made anew at the next call; the jobs are then gone and calls say so.
 */
export async function databaseStore(): Promise<JobStore> {
  let connection: Promise<IDBPDatabase<JobSchema>> | undefined;
  let wasLost = false;
  /** Set where this page's database is one that no page will find again; the journal then goes this way. */
  let wayOut: FreshLook | undefined;

  const connect = async () => {
    if (wayOut) throw orphaned();
    const open = await openDatabase(() => {
      connection = undefined;
      wasLost = true;
    });
    if (wasLost) {
      // Where a fresh look cannot be had, the connection is taken for what it says it is.
      const look = await freshLook().catch(() => undefined);
      if (look && !(await isFound(open, look))) {
        wayOut = look;
        open.close();
        throw orphaned();
      }
      look?.close();
      wasLost = false;
    }
    return open;
  };
  const database = () => {
    connection ??= connect();
    // A failed opening is not remembered, so that the next call tries again.
    connection.catch(() => {
      connection = undefined;
    });
    return connection;
  };

  /** Runs `body` in one transaction and waits until it is on disk: a throw inside undoes all of it. */
  const run = async <Mode extends "readonly" | "readwrite", Result>(
    stores: Store[],
    mode: Mode,
    body: (tx: Transaction<Mode>) => Promise<Result>,
  ): Promise<Result> => {
    let tx: Transaction<Mode> | undefined;
    try {
      const options = mode === "readwrite" ? { durability: "strict" as const } : {};
      tx = (await database()).transaction(stores, mode, options);
      // A refused commit rejects `done` before the body is through; it is awaited below, and must not go unheard here.
      tx.done.catch(() => {});
      const result = await body(tx);
      await tx.done;
      return result;
    } catch (error) {
      // The transaction's own reason (no room) says more than the request that it took down with it.
      const reason = tx?.error ?? error;
      try {
        tx?.abort();
      } catch {
        // It has ended already.
      }
      throw toRefusal(reason);
    }
  };

  await database();
  return {
    kind: "database",
    list: () =>
      run(["heads"], "readonly", async (tx) => {
        const all: readonly unknown[] = await tx.objectStore("heads").getAll();
        const heads = all.filter(isHead);
        return { heads, unreadable: all.length - heads.length };
      }),
    read: (id, lists) =>
      run(content, "readonly", async (tx) => {
        const [head, body, drafts] = await Promise.all([
          tx.objectStore("heads").get(id),
          tx.objectStore("bodies").get(id),
          tx.objectStore("drafts").get(id),
        ]);
        if (!head || !body) return undefined;
        return { head, job: await withLists(tx, id, body.frame, lists), drafts: drafts?.drafts ?? {} };
      }),
    add: ({ head, job, drafts }) =>
      run(content, "readwrite", async (tx) => {
        await Promise.all([
          tx.objectStore("heads").add(head),
          tx.objectStore("bodies").put({ id: head.id, frame: job.frame }),
          tx.objectStore("drafts").put({ id: head.id, drafts }),
          ...[...job.lists].map(([key, list]) => tx.objectStore("lists").put(list, [head.id, key])),
        ]);
      }),
    write: (write) => run([...content, "versions", "journal"], "readwrite", (tx) => writeIn(tx, write)),
    amend: (id, change) =>
      run(["heads"], "readwrite", async (tx) => {
        const head = await tx.objectStore("heads").get(id);
        if (!head) return undefined;
        const amended = amendHead(head, change);
        await tx.objectStore("heads").put(amended);
        return amended;
      }),
    erase: (id) =>
      run(everything, "readwrite", async (tx) => {
        await Promise.all([
          ...(["heads", "bodies", "drafts", "handles"] as const).map((store) => tx.objectStore(store).delete(id)),
          ...ofOneJob.map((store) => tx.objectStore(store).delete(rangeOf(id))),
        ]);
      }),
    versions: (id) =>
      run(["versions"], "readonly", async (tx) => {
        const all = await tx.objectStore("versions").getAll(rangeOf(id));
        return all.map(({ head }) => head).reverse();
      }),
    readVersion: (id, number) =>
      run(["versions", "lists"], "readonly", async (tx) => {
        const version = await tx.objectStore("versions").get([id, number]);
        return version && withLists(tx, id, version.frame);
      }),
    writeJournal: async (entry) => {
      if (wayOut) return wayOut.writeJournal(entry);
      const open = await database();
      // No look at anything else and an explicit commit: what was asked for before the page dies then still happens.
      const tx = open.transaction(["journal"], "readwrite", { durability: "relaxed" });
      const done = tx.done.catch((error: unknown) => Promise.reject(toRefusal(tx.error ?? error)));
      tx.objectStore("journal")
        .put(entry)
        .catch(() => {});
      tx.commit();
      await done;
    },
    journal: () => run(["journal"], "readonly", (tx) => tx.objectStore("journal").getAll()),
    dropJournal: (jobId, session) =>
      run(["journal"], "readwrite", (tx) => tx.objectStore("journal").delete([jobId, session])),
    putTrack: (jobId, roadId, track) =>
      run(["tracks"], "readwrite", async (tx) => void (await tx.objectStore("tracks").put(track, [jobId, roadId]))),
    readTrack: (jobId, roadId) => run(["tracks"], "readonly", (tx) => tx.objectStore("tracks").get([jobId, roadId])),
    copyTracks: (fromId, toId) =>
      run(["tracks"], "readwrite", async (tx) => {
        const tracks = tx.objectStore("tracks");
        const [keys, values] = await Promise.all([tracks.getAllKeys(rangeOf(fromId)), tracks.getAll(rangeOf(fromId))]);
        await Promise.all(values.map((track, i) => tracks.put(track, [toId, keys[i]?.[1] ?? ""])));
      }),
    putHandle: (jobId, handle) =>
      run(["handles"], "readwrite", async (tx) => void (await tx.objectStore("handles").put(handle, jobId))),
    readHandle: (jobId) => run(["handles"], "readonly", (tx) => tx.objectStore("handles").get(jobId)),
    dropHandle: (jobId) => run(["handles"], "readwrite", (tx) => tx.objectStore("handles").delete(jobId)),
    close() {
      void connection?.then((open) => open.close()).catch(() => {});
      connection = undefined;
    },
  };
}

function orphaned(): StoreRefusal {
  return new StoreRefusal("orphaned", "the site's data were cleared while this page was open");
}

/** Whether what is written to `open` is there for a page that looks anew; leaves nothing behind. */
async function isFound(open: IDBPDatabase<JobSchema>, look: FreshLook): Promise<boolean> {
  const key = `probe-${Math.random()}`;
  await open.put("handles", true, key);
  const found = await look.hasHandle(key);
  await open.delete("handles", key);
  return found;
}
