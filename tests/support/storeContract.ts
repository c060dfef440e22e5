import type { Drafts } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import { jobLine } from "../../web/store/jobLine.ts";
import type { Commit, JobHead, StoredJob } from "../../web/store/jobRecord.ts";
import type { JobStore, JobWrite } from "../../web/store/jobStore.ts";
import { liftLists, lowerLists } from "../../web/store/liftedLists.ts";
import { newHead } from "../../web/store/newHead.ts";
import { sameDocument } from "../../web/store/sameDocument.ts";
import { KEPT_VERSIONS, PAUSE_ms } from "../../web/store/versionPolicy.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "./inventedJob.ts";

/** Two stores over the same place, as two pages over one database. */
export interface TwoStores {
  readonly here: JobStore;
  readonly there: JobStore;
}

/** What every store must do, said once and run against each of them: in Node and, for the database, in a browser. */
export interface ContractCase {
  readonly name: string;
  run(stores: TwoStores): Promise<void>;
}

const START_ms = 1_700_000_000_000;

function equal(found: unknown, wanted: unknown, what: string): void {
  if (!sameDocument(found, wanted)) {
    throw new Error(`${what}: found ${JSON.stringify(found)}, wanted ${JSON.stringify(wanted)}`);
  }
}

async function rejects(promise: Promise<unknown>, what: string): Promise<void> {
  const outcome = await promise.then(
    () => "went through",
    () => "rejected",
  );
  equal(outcome, "rejected", what);
}

function stored(id: string, job: Job, drafts: Drafts = {}): StoredJob {
  const head = newHead({ id, title: job.title, line: jobLine(job), session: "a", now_ms: START_ms, reason: "made" });
  return { head, job: liftLists(job), drafts };
}

function commitOf(job: Job, reason: string, isMilestone = false): Commit {
  return { job: liftLists(job), title: job.title, line: jobLine(job), reason, edits: 1, isMilestone };
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
  return found && lowerLists(found.job);
}

export const storeContract: readonly ContractCase[] = [
  {
    name: "gives back a job, its drafts and its head as they were added, to any page",
    async run({ here, there }) {
      const job = withRecordedRoad(inventedJob(), 1000);
      const added = stored("j", job, { "vehicle.load_kg": halfTyped("15") });
      await here.add(added);
      const found = await there.read("j");
      equal(found?.head, added.head, "head");
      equal(found?.drafts, added.drafts, "drafts");
      equal(await whole(there, "j"), job, "job");
      equal((await there.list()).heads, [added.head], "list");
    },
  },
  {
    name: "says nothing of a job it does not know",
    async run({ here }) {
      equal(await here.read("j"), undefined, "read");
      equal(await here.amend("j", { shelf: "archived" }), undefined, "amend");
      equal(await here.readVersion("j", 1), undefined, "readVersion");
      equal(await here.versions("j"), [], "versions");
      equal((await here.write(writeOf(stored("j", inventedJob()).head))).kind, "vanished", "write");
      equal((await here.list()).heads, [], "list");
    },
  },
  {
    name: "refuses to add a job under an id that is taken, and leaves the first as it was",
    async run({ here, there }) {
      await here.add(stored("j", inventedJob("First")));
      await rejects(there.add(stored("j", inventedJob("Second"))), "second add");
      equal((await here.read("j"))?.head.title, "First", "title");
      equal(await whole(here, "j"), inventedJob("First"), "job");
    },
  },
  {
    name: "writes where the revision is the one built on, and counts revision and edits",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      const next = inventedJob("Renamed", 200);
      const head = await written(
        here,
        writeOf(first.head, { commit: commitOf(next, "load 150 kg to 200 kg"), step: 7 }),
      );
      equal(head.revision, 2, "revision");
      equal(head.editCount, 1, "edits");
      equal(head.writerStep, 7, "step");
      equal(head.title, "Renamed", "title");
      equal((await there.read("j"))?.head, head, "head as the other page reads it");
      equal(await whole(there, "j"), next, "job");
    },
  },
  {
    name: "does not write where another page wrote since, and changes nothing",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      const theirs = inventedJob("Saloon", 175);
      const head = await written(there, writeOf(first.head, { session: "b", commit: commitOf(theirs, "theirs") }));
      const mine = writeOf(first.head, {
        commit: commitOf(inventedJob("Saloon", 300), "mine"),
        drafts: { x: halfTyped("1") },
      });
      const answer = await here.write(mine);
      equal(answer, { kind: "stale", head }, "answer");
      equal(await whole(here, "j"), theirs, "job");
      equal((await here.read("j"))?.drafts, {}, "drafts");
      equal((await here.read("j"))?.head, head, "head");
    },
  },
  {
    name: "lets one of two writes at the same moment through, not both",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      const answers = await Promise.all([
        here.write(writeOf(first.head, { session: "a", commit: commitOf(inventedJob("S", 1), "a") })),
        there.write(writeOf(first.head, { session: "b", commit: commitOf(inventedJob("S", 2), "b") })),
      ]);
      equal(answers.map(({ kind }) => kind).sort(), ["stale", "written"], "answers");
      const winner = answers[0].kind === "written" ? 1 : 2;
      equal(await whole(here, "j"), inventedJob("S", winner), "job");
    },
  },
  {
    name: "does not write to a job that was removed",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      await there.amend("j", { shelf: "removed", removedAt_ms: START_ms });
      equal((await here.write(writeOf(first.head))).kind, "removed", "answer");
    },
  },
  {
    name: "takes drafts without touching the job or its version",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      const drafts = { "vehicle.load_kg": halfTyped("14 1/"), title: halfTyped("") };
      const head = await written(here, writeOf(first.head, { drafts, now_ms: START_ms + 10 * PAUSE_ms, session: "b" }));
      equal((await there.read("j"))?.drafts, drafts, "drafts");
      equal(await whole(there, "j"), inventedJob(), "job");
      equal(head.version, first.head.version, "version");
      equal(await here.versions("j"), [], "versions");
    },
  },
  {
    name: "puts the state before a pause among the versions, with its reason, and edits without a pause into one",
    async run({ here }) {
      await here.add(stored("j", inventedJob("S", 1)));
      let head = stored("j", inventedJob()).head;
      const edit = async (load_kg: number, now_ms: number, reason: string) => {
        head = await written(here, writeOf(head, { commit: commitOf(inventedJob("S", load_kg), reason), now_ms }));
      };
      await edit(2, START_ms + 1000, "to 2");
      await edit(3, START_ms + 2000, "to 3");
      await edit(4, START_ms + 2000 + PAUSE_ms, "to 4");
      const versions = await here.versions("j");
      equal(
        versions.map(({ number, reason, edits }) => ({ number, reason, edits })),
        [{ number: 1, reason: "to 3", edits: 2 }],
        "versions",
      );
      equal(head.version.number, 2, "number of the present state");
      const past = await here.readVersion("j", 1);
      equal(past && lowerLists(past), inventedJob("S", 3), "state of version 1");
    },
  },
  {
    name: `keeps the last ${KEPT_VERSIONS} versions, newest first, and the long lists that they and only they need`,
    async run({ here }) {
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
      equal(
        versions.map(({ number }) => number),
        Array.from({ length: KEPT_VERSIONS }, (_, i) => newest - i),
        "numbers",
      );
      for (const { number } of versions) {
        const lifted = await here.readVersion("j", number);
        equal(lifted && lowerLists(lifted), states[number - 1], `version ${number}`);
      }
      equal(await here.readVersion("j", 5), undefined, "a version that was dropped");
      const every = new Set([...liftLists(first).lists.keys(), ...liftLists(states[10]).lists.keys()]);
      const kept = [...((await here.read("j", every))?.job.lists.keys() ?? [])].sort();
      equal(kept, [...liftLists(states[10]).lists.keys()].sort(), "lists that are still stored");
    },
  },
  {
    name: "takes a commit that carries only the lists the store does not have",
    async run({ here }) {
      const job = withRecordedRoad(inventedJob(), 500);
      await here.add(stored("j", job));
      const next = { ...job, title: "Renamed" };
      const commit = { ...commitOf(next, "renamed"), job: { frame: liftLists(next).frame, lists: new Map() } };
      await written(here, writeOf(stored("j", job).head, { commit }));
      equal(await whole(here, "j"), next, "job");
    },
  },
  {
    name: "changes the head alone without a new revision, and takes fields away again",
    async run({ here, there }) {
      await here.add(stored("j", inventedJob()));
      const file = { name: "s.json", savedAt_ms: START_ms, editCount: 0 };
      await here.amend("j", { shelf: "removed", removedAt_ms: START_ms + 5, file });
      const removed = (await there.list()).heads[0];
      equal([removed?.shelf, removed?.removedAt_ms, removed?.revision], ["removed", START_ms + 5, 1], "removed");
      await there.amend("j", { shelf: "open", removedAt_ms: undefined });
      equal((await here.read("j"))?.head, { ...stored("j", inventedJob()).head, file }, "brought back");
    },
  },
  {
    name: "keeps last words until a save carries them, and moves later ones onto its revision",
    async run({ here, there }) {
      const first = stored("j", inventedJob());
      await here.add(first);
      const words = { jobId: "j", session: "a", step: 3, base: 1, at_ms: START_ms, drafts: { x: halfTyped("1") } };
      await here.putLastWords(words);
      equal(await there.lastWords(), [words], "words");
      const head = await written(here, writeOf(first.head, { step: 2 }));
      equal(await there.lastWords(), [{ ...words, base: 2 }], "words after a save that does not carry them");
      await written(here, writeOf(head, { step: 3, drafts: { x: halfTyped("1") } }));
      equal(await there.lastWords(), [], "words after the save that does");
    },
  },
  {
    name: "drops the last words of one session and leaves those of others",
    async run({ here }) {
      await here.add(stored("j", inventedJob()));
      const words = { jobId: "j", session: "a", step: 1, base: 1, at_ms: START_ms, drafts: {} };
      await here.putLastWords(words);
      await here.putLastWords({ ...words, session: "b" });
      await here.dropLastWords("j", "a");
      equal(
        (await here.lastWords()).map(({ session }) => session),
        ["b"],
        "sessions",
      );
    },
  },
  {
    name: "keeps tracks and handles of a job, copies tracks, and erases everything of that job alone",
    async run({ here, there }) {
      await here.add(stored("j", withRecordedRoad(inventedJob(), 300)));
      await here.add(stored("k", withRecordedRoad(inventedJob("Other"), 300)));
      const track = { latitude_deg: Float64Array.of(51.5, 51.6), longitude_deg: Float64Array.of(-0.1, -0.2) };
      await here.putTrack("j", "usual", track);
      await here.copyTracks("j", "k");
      await here.copyTracks("nobody", "k");
      await here.putHandle("j", { name: "s.json" });
      await here.putLastWords({ jobId: "j", session: "a", step: 1, base: 1, at_ms: START_ms, drafts: {} });
      equal(await there.readTrack("k", "usual"), track, "copied track");
      equal(await there.readHandle("j"), { name: "s.json" }, "handle");
      await there.erase("j");
      equal(await here.read("j"), undefined, "job");
      equal(await here.readTrack("j", "usual"), undefined, "track");
      equal(await here.readHandle("j"), undefined, "handle after");
      equal(await here.lastWords(), [], "words");
      equal(await here.readTrack("k", "usual"), track, "the other job's track");
      equal(await whole(here, "k"), withRecordedRoad(inventedJob("Other"), 300), "the other job");
    },
  },
  {
    name: "lets go of a handle",
    async run({ here }) {
      await here.add(stored("j", inventedJob()));
      await here.putHandle("j", { name: "s.json" });
      await here.dropHandle("j");
      equal(await here.readHandle("j"), undefined, "handle");
    },
  },
  {
    name: "hands out copies: changing what was read changes nothing stored",
    async run({ here }) {
      await here.add(stored("j", withRecordedRoad(inventedJob(), 300)));
      const found = await here.read("j");
      if (!found) throw new Error("the job is missing");
      (found.job.frame as { title: string }).title = "Scribbled";
      for (const list of found.job.lists.values()) list.fill(-1);
      equal(await whole(here, "j"), withRecordedRoad(inventedJob(), 300), "job");
    },
  },
];
