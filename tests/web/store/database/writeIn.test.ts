import { afterAll, beforeAll, expect, it, vi } from "vitest";
import { externaliseLists, listKeys } from "../../../../web/store/database/externalLists.ts";
import type { JobHead } from "../../../../web/store/database/jobRecord.ts";
import type { JobWrite } from "../../../../web/store/database/jobStore.ts";
import { PAUSE_ms } from "../../../../web/store/database/versionPolicy.ts";
import { type Transaction, withLists, writeIn } from "../../../../web/store/database/writeIn.ts";
import { newHead } from "../../../../web/store/newHead.ts";

// Node has no database: keys are held as text, and a range is the job that it is of.
beforeAll(() => vi.stubGlobal("IDBKeyRange", { bound: ([id]: readonly string[]) => ({ of: id }) }));
afterAll(() => vi.unstubAllGlobals());

const keyPaths: Readonly<Record<string, readonly string[]>> = {
  heads: ["id"],
  bodies: ["id"],
  drafts: ["id"],
  versions: ["jobId", "number"],
  journal: ["jobId", "session"],
};

/** A transaction over stores that are maps by the text of their keys. */
function fakeTransaction() {
  const stores = new Map<string, Map<string, unknown>>();
  const objectStore = (name: string) => {
    const store = stores.get(name) ?? new Map<string, unknown>();
    stores.set(name, store);
    const text = (key: unknown) => JSON.stringify([key].flat());
    const inRange = ({ of }: { of: string }) => [...store.keys()].filter((key) => JSON.parse(key)[0] === of);
    return {
      get: async (key: unknown) => store.get(text(key)),
      put: async (value: Record<string, unknown>, key?: unknown) => {
        store.set(text(key ?? keyPaths[name]?.map((part) => value[part])), value);
      },
      delete: async (key: unknown) => store.delete(text(key)),
      count: async (range: { of: string }) => inRange(range).length,
      getAll: async (range: { of: string }) => inRange(range).map((key) => store.get(key)),
      getAllKeys: async (range: { of: string }) => inRange(range).map((key) => JSON.parse(key)),
    };
  };
  const keys = (name: string) => [...(stores.get(name)?.keys() ?? [])];
  return { tx: { objectStore } as unknown as Transaction<"readwrite"> & Transaction<"readonly">, objectStore, keys };
}

const road = (speed: number) => new Array<number>(300).fill(speed);
const document = (load_kg: number, speed: number) => ({ load_kg, road: road(speed) });

function write(changes: Partial<JobWrite>): JobWrite {
  return { id: "j1", expected: 1, session: "a", step: 1, now_ms: 1000, drafts: {}, ...changes };
}
function commit(job: unknown, isMilestone = false): NonNullable<JobWrite["commit"]> {
  return { job: externaliseLists(job), title: "Saloon", line: "", reason: "load", edits: 1, isMilestone };
}

/** A store with one job in it. */
async function withJob(changes: Partial<JobHead> = {}) {
  const fake = fakeTransaction();
  const head = { ...newHead({ id: "j1", title: "Saloon", line: "", session: "a", now_ms: 0, reason: "" }), ...changes };
  const { frame, lists } = externaliseLists(document(150, 30));
  await fake.objectStore("heads").put({ ...head });
  await fake.objectStore("bodies").put({ id: "j1", frame });
  for (const [key, list] of lists) await fake.objectStore("lists").put(list as never, ["j1", key]);
  return fake;
}

it("writes nothing where another page wrote in between", async () => {
  const { tx, objectStore, keys } = await withJob({ revision: 2 });
  const answer = await writeIn(tx, write({ commit: commit(document(175, 30)) }));
  expect(answer.kind).toBe("stale");
  expect(keys("drafts")).toEqual([]);
  expect(await objectStore("bodies").get("j1")).toMatchObject({ frame: { load_kg: 150 } });
});

it("leaves the job's content alone where only drafts are written", async () => {
  const { tx, objectStore } = await withJob();
  const drafts = { title: { typed: "?" } };
  const answer = await writeIn(tx, write({ drafts }));
  expect(answer).toMatchObject({ kind: "written", head: { revision: 2, editCount: 0 } });
  expect(await objectStore("drafts").get("j1")).toEqual({ id: "j1", drafts });
  expect(await objectStore("bodies").get("j1")).toMatchObject({ frame: { load_kg: 150 } });
});

it("keeps the body before as a version after a rest, with the long lists that both need", async () => {
  const { tx, objectStore, keys } = await withJob();
  await writeIn(tx, write({ now_ms: PAUSE_ms, commit: commit(document(175, 40)) }));
  expect(await objectStore("versions").get(["j1", 1])).toMatchObject({ frame: { load_kg: 150 } });
  expect(keys("lists")).toHaveLength(2);
  const { frame } = (await objectStore("versions").get(["j1", 1])) as { frame: unknown };
  const { lists } = await withLists(tx, "j1", frame);
  expect([...lists.keys()]).toEqual([...listKeys(frame)]);
  expect([...lists.values()][0]?.[0]).toBe(30);
});

it("drops a long list that neither the job nor a version refers to any more, and none of another job", async () => {
  const { tx, objectStore, keys } = await withJob();
  await objectStore("lists").put(Float64Array.of(1) as never, ["j2", "of another job"]);
  // Within the same version: nothing keeps the body before.
  await writeIn(tx, write({ commit: commit(document(150, 40)) }));
  expect(keys("versions")).toEqual([]);
  const [kept] = [...externaliseLists(document(150, 40)).lists.keys()];
  expect(keys("lists").sort()).toEqual([JSON.stringify(["j1", kept]), JSON.stringify(["j2", "of another job"])].sort());
});

it("takes out of the journal what the write carries, and leaves what was typed since, built on the new revision", async () => {
  for (const [step, left] of [
    [1, undefined],
    [2, { step: 2, base: 2 }],
  ] as const) {
    const { tx, objectStore } = await withJob();
    await objectStore("journal").put({ jobId: "j1", session: "a", step, base: 1 });
    await writeIn(tx, write({ step: 1 }));
    const entry = await objectStore("journal").get(["j1", "a"]);
    if (left) expect(entry).toMatchObject(left);
    else expect(entry).toBeUndefined();
  }
});
