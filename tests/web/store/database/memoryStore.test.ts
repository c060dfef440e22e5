import { describe, expect, it } from "vitest";
import type { Drafts } from "../../../../shared/job/draft.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { externaliseLists, inlineLists } from "../../../../web/store/database/externalLists.ts";
import type { Commit, JobHead, StoredJob } from "../../../../web/store/database/jobRecord.ts";
import type { JobStore, JobWrite } from "../../../../web/store/database/jobStore.ts";
import { emptyShelves, memoryStore } from "../../../../web/store/database/memoryStore.ts";
import { KEPT_VERSIONS, PAUSE_ms } from "../../../../web/store/database/versionPolicy.ts";
import { jobLine } from "../../../../web/store/jobLine.ts";
import { newHead } from "../../../../web/store/newHead.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "../../../support/inventedJob.ts";

const START_ms = 1_700_000_000_000;

function stored(id: string, job: Job, drafts: Drafts = {}): StoredJob {
  const head = newHead({ id, title: job.title, line: jobLine(job), session: "a", now_ms: START_ms, reason: "made" });
  return { head, job: externaliseLists(job), drafts };
}

function commitOf(job: Job, reason: string, isMilestone = false): Commit {
  return { job: externaliseLists(job), title: job.title, line: jobLine(job), reason, edits: 1, isMilestone };
}

function writeOf(head: JobHead, change: Partial<JobWrite> = {}): JobWrite {
  return { id: head.id, expected: head.revision, session: "a", step: 1, now_ms: START_ms, drafts: {}, ...change };
}

async function written(store: JobStore, write: JobWrite): Promise<JobHead> {
  const answer = await store.write(write);
  if (answer.kind !== "written") throw new Error(`found the answer ${answer.kind}, written wanted`);
  return answer.head;
}

async function whole(store: JobStore, id: string): Promise<unknown> {
  const found = await store.read(id);
  return found && inlineLists(found.job);
}

/** Two stores over the same place, as two pages over one database. */
function twoStores(): { readonly here: JobStore; readonly there: JobStore } {
  const shelves = emptyShelves();
  return { here: memoryStore(shelves), there: memoryStore(shelves) };
}

describe("the store in memory", () => {
  it("gives back a job, its drafts and its head as they were added, to any page", async () => {
    const { here, there } = twoStores();
    const job = withRecordedRoad(inventedJob(), 1000);
    const added = stored("j", job, { "vehicle.load_kg": halfTyped("15") });
    await here.add(added);
    const found = await there.read("j");
    expect(found?.head, "head").toEqual(added.head);
    expect(found?.drafts, "drafts").toEqual(added.drafts);
    expect(await whole(there, "j"), "job").toEqual(job);
    expect((await there.list()).heads, "list").toEqual([added.head]);
  });

  it("says nothing of a job it does not know", async () => {
    const { here } = twoStores();
    expect(await here.read("j"), "read").toEqual(undefined);
    expect(await here.amend("j", { shelf: "archived" }), "amend").toEqual(undefined);
    expect(await here.readVersion("j", 1), "readVersion").toEqual(undefined);
    expect(await here.versions("j"), "versions").toEqual([]);
    expect((await here.write(writeOf(stored("j", inventedJob()).head))).kind, "write").toEqual("vanished");
    expect((await here.list()).heads, "list").toEqual([]);
  });

  it("refuses to add a job under an id that is taken, and leaves the first as it was", async () => {
    const { here, there } = twoStores();
    await here.add(stored("j", inventedJob("First")));
    await expect(there.add(stored("j", inventedJob("Second")))).rejects.toThrow();
    expect((await here.read("j"))?.head.title, "title").toEqual("First");
    expect(await whole(here, "j"), "job").toEqual(inventedJob("First"));
  });

  it("writes where the revision is the one built on, and counts revision and edits", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    const next = inventedJob("Renamed", 200);
    const head = await written(here, writeOf(first.head, { commit: commitOf(next, "load 150 kg to 200 kg"), step: 7 }));
    expect(head.revision, "revision").toEqual(2);
    expect(head.editCount, "edits").toEqual(1);
    expect(head.writerStep, "step").toEqual(7);
    expect(head.title, "title").toEqual("Renamed");
    expect((await there.read("j"))?.head, "head as the other page reads it").toEqual(head);
    expect(await whole(there, "j"), "job").toEqual(next);
  });

  it("does not write where another page wrote since, and changes nothing", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    const theirs = inventedJob("Saloon", 175);
    const head = await written(there, writeOf(first.head, { session: "b", commit: commitOf(theirs, "theirs") }));
    const mine = writeOf(first.head, {
      commit: commitOf(inventedJob("Saloon", 300), "mine"),
      drafts: { x: halfTyped("1") },
    });
    const answer = await here.write(mine);
    expect(answer, "answer").toEqual({ kind: "stale", head });
    expect(await whole(here, "j"), "job").toEqual(theirs);
    expect((await here.read("j"))?.drafts, "drafts").toEqual({});
    expect((await here.read("j"))?.head, "head").toEqual(head);
  });

  it("lets one of two writes at the same moment through, not both", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    const answers = await Promise.all([
      here.write(writeOf(first.head, { session: "a", commit: commitOf(inventedJob("S", 1), "a") })),
      there.write(writeOf(first.head, { session: "b", commit: commitOf(inventedJob("S", 2), "b") })),
    ]);
    expect(answers.map(({ kind }) => kind).sort(), "answers").toEqual(["stale", "written"]);
    const winner = answers[0].kind === "written" ? 1 : 2;
    expect(await whole(here, "j"), "job").toEqual(inventedJob("S", winner));
  });

  it("does not write to a job that was removed", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    await there.amend("j", { shelf: "removed", removedAt_ms: START_ms });
    expect((await here.write(writeOf(first.head))).kind, "answer").toEqual("removed");
  });

  it("takes drafts without touching the job or its version", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    const drafts = { "vehicle.load_kg": halfTyped("14 1/"), title: halfTyped("") };
    const head = await written(here, writeOf(first.head, { drafts, now_ms: START_ms + 10 * PAUSE_ms, session: "b" }));
    expect((await there.read("j"))?.drafts, "drafts").toEqual(drafts);
    expect(await whole(there, "j"), "job").toEqual(inventedJob());
    expect(head.version, "version").toEqual(first.head.version);
    expect(await here.versions("j"), "versions").toEqual([]);
  });

  it("puts the state before a pause among the versions, with its reason, and edits without a pause into one", async () => {
    const { here } = twoStores();
    await here.add(stored("j", inventedJob("S", 1)));
    let head = stored("j", inventedJob()).head;
    const edit = async (load_kg: number, now_ms: number, reason: string) => {
      head = await written(here, writeOf(head, { commit: commitOf(inventedJob("S", load_kg), reason), now_ms }));
    };
    await edit(2, START_ms + 1000, "to 2");
    await edit(3, START_ms + 2000, "to 3");
    await edit(4, START_ms + 2000 + PAUSE_ms, "to 4");
    const versions = await here.versions("j");
    expect(
      versions.map(({ number, reason, edits }) => ({ number, reason, edits })),
      "versions",
    ).toEqual([{ number: 1, reason: "to 3", edits: 2 }]);
    expect(head.version.number, "number of the present state").toEqual(2);
    const past = await here.readVersion("j", 1);
    expect(past && inlineLists(past), "state of version 1").toEqual(inventedJob("S", 3));
  });

  it(`keeps the last ${KEPT_VERSIONS} versions, newest first, and the long lists that they and only they need`, async () => {
    const { here } = twoStores();
    const first = withRecordedRoad(inventedJob("S", 1), 300, 40);
    await here.add(stored("j", first));
    let head = stored("j", first).head;
    const states: Job[] = [first];
    for (let i = 1; i <= KEPT_VERSIONS + 5; i++) {
      // The road changes once, after the third version: the first road is then needed by dropped versions only.
      const job = withRecordedRoad(inventedJob("S", i + 1), 300, i < 3 ? 40 : 60);
      states.push(job);
      head = await written(here, writeOf(head, { commit: commitOf(job, `edit ${i}`, true), now_ms: START_ms + i }));
    }
    const versions = await here.versions("j");
    const newest = KEPT_VERSIONS + 5;
    expect(
      versions.map(({ number }) => number),
      "numbers",
    ).toEqual(Array.from({ length: KEPT_VERSIONS }, (_, i) => newest - i));
    for (const { number } of versions) {
      const lifted = await here.readVersion("j", number);
      expect(lifted && inlineLists(lifted), `version ${number}`).toEqual(states[number - 1]);
    }
    expect(await here.readVersion("j", 5), "a version that was dropped").toEqual(undefined);
    const every = new Set([...externaliseLists(first).lists.keys(), ...externaliseLists(states[10]).lists.keys()]);
    const kept = [...((await here.read("j", every))?.job.lists.keys() ?? [])].sort();
    expect(kept, "lists that are still stored").toEqual([...externaliseLists(states[10]).lists.keys()].sort());
  });

  it("takes a commit that carries only the lists the store does not have", async () => {
    const { here } = twoStores();
    const job = withRecordedRoad(inventedJob(), 500);
    await here.add(stored("j", job));
    const next = { ...job, title: "Renamed" };
    const commit = { ...commitOf(next, "renamed"), job: { frame: externaliseLists(next).frame, lists: new Map() } };
    await written(here, writeOf(stored("j", job).head, { commit }));
    expect(await whole(here, "j"), "job").toEqual(next);
  });

  it("changes the head alone without a new revision, and takes fields away again", async () => {
    const { here, there } = twoStores();
    await here.add(stored("j", inventedJob()));
    const file = { name: "s.json", savedAt_ms: START_ms, editCount: 0 };
    await here.amend("j", { shelf: "removed", removedAt_ms: START_ms + 5, file });
    const removed = (await there.list()).heads[0];
    expect([removed?.shelf, removed?.removedAt_ms, removed?.revision], "removed").toEqual(["removed", START_ms + 5, 1]);
    await there.amend("j", { shelf: "open", removedAt_ms: undefined });
    expect((await here.read("j"))?.head, "brought back").toEqual({ ...stored("j", inventedJob()).head, file });
  });

  it("keeps a journal until a save carries it, and moves a later one onto its revision", async () => {
    const { here, there } = twoStores();
    const first = stored("j", inventedJob());
    await here.add(first);
    const entry = { jobId: "j", session: "a", step: 3, base: 1, at_ms: START_ms, drafts: { x: halfTyped("1") } };
    await here.writeJournal(entry);
    expect(await there.journal(), "entry").toEqual([entry]);
    const head = await written(here, writeOf(first.head, { step: 2 }));
    expect(await there.journal(), "after a save that does not carry it").toEqual([{ ...entry, base: 2 }]);
    await written(here, writeOf(head, { step: 3, drafts: { x: halfTyped("1") } }));
    expect(await there.journal(), "after the save that does").toEqual([]);
  });

  it("drops the journal of one session and leaves those of others", async () => {
    const { here } = twoStores();
    await here.add(stored("j", inventedJob()));
    const entry = { jobId: "j", session: "a", step: 1, base: 1, at_ms: START_ms, drafts: {} };
    await here.writeJournal(entry);
    await here.writeJournal({ ...entry, session: "b" });
    await here.dropJournal("j", "a");
    expect(
      (await here.journal()).map(({ session }) => session),
      "sessions",
    ).toEqual(["b"]);
  });

  it("keeps tracks and handles of a job, copies tracks, and erases everything of that job alone", async () => {
    const { here, there } = twoStores();
    await here.add(stored("j", withRecordedRoad(inventedJob(), 300)));
    await here.add(stored("k", withRecordedRoad(inventedJob("Other"), 300)));
    const track = { latitude_deg: Float64Array.of(51.5, 51.6), longitude_deg: Float64Array.of(-0.1, -0.2) };
    await here.putTrack("j", "usual", track);
    await here.copyTracks("j", "k");
    await here.copyTracks("nobody", "k");
    await here.putHandle("j", { name: "s.json" });
    await here.writeJournal({ jobId: "j", session: "a", step: 1, base: 1, at_ms: START_ms, drafts: {} });
    expect(await there.readTrack("k", "usual"), "copied track").toEqual(track);
    expect(await there.readHandle("j"), "handle").toEqual({ name: "s.json" });
    await there.erase("j");
    expect(await here.read("j"), "job").toEqual(undefined);
    expect(await here.readTrack("j", "usual"), "track").toEqual(undefined);
    expect(await here.readHandle("j"), "handle after").toEqual(undefined);
    expect(await here.journal(), "entry").toEqual([]);
    expect(await here.readTrack("k", "usual"), "the other job's track").toEqual(track);
    expect(await whole(here, "k"), "the other job").toEqual(withRecordedRoad(inventedJob("Other"), 300));
  });

  it("lets go of a handle", async () => {
    const { here } = twoStores();
    await here.add(stored("j", inventedJob()));
    await here.putHandle("j", { name: "s.json" });
    await here.dropHandle("j");
    expect(await here.readHandle("j"), "handle").toEqual(undefined);
  });

  it("hands out copies: changing what was read changes nothing stored", async () => {
    const { here } = twoStores();
    await here.add(stored("j", withRecordedRoad(inventedJob(), 300)));
    const found = await here.read("j");
    if (!found) throw new Error("the job is missing");
    (found.job.frame as { title: string }).title = "Scribbled";
    for (const list of found.job.lists.values()) list.fill(-1);
    expect(await whole(here, "j"), "job").toEqual(withRecordedRoad(inventedJob(), 300));
  });
});
