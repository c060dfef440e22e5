import { effect, signal } from "@preact/signals-core";
import { html, render } from "lit-html";
import { InputError } from "../../shared/problems.ts";
import { databaseStore } from "../../web/store/databaseStore.ts";
import type { Difference } from "../../web/store/jobDiff.ts";
import type { Drafts } from "../../web/store/jobRecord.ts";
import { openJobs } from "../../web/store/jobs.ts";
import type { JobVersion } from "../../web/store/jobsDoor.ts";
import { inventedJob, withRecordedRoad } from "./inventedJob.ts";
import { storeContract } from "./storeContract.ts";
import { acceptDroppedFiles } from "./storeViews/dropJobFile.ts";
import { viewConflict } from "./storeViews/viewConflict.ts";
import { type RefusedFile, viewFileProblems } from "./storeViews/viewFileProblems.ts";
import { viewJobList } from "./storeViews/viewJobList.ts";
import { viewNews } from "./storeViews/viewNews.ts";
import { viewReminder, viewSafekeeping } from "./storeViews/viewReminder.ts";
import { viewSaveLine } from "./storeViews/viewSaveLine.ts";
import { viewDifferences, viewVersions } from "./storeViews/viewVersions.ts";

// A page with two fields over the storage of jobs, for tests in a browser: the storage is driven as the notebook drives
// it, and every view stands on it once. `window.storePage` is what a test may ask for beyond what a person can do.

const jobs = await openJobs();
if (!jobs.list.value.some((head) => head.shelf === "open")) await jobs.create(inventedJob("Saloon"), "the demo");
else if (location.hash === "") await jobs.open(jobs.list.value.find((head) => head.shelf === "open")?.id ?? "");

let job = jobs.current.value?.job ?? inventedJob();
let drafts: Drafts = jobs.current.value?.drafts ?? {};
const refused = signal<RefusedFile | undefined>(undefined);
const versions = signal<readonly JobVersion[]>([]);
const differences = signal<readonly Difference[] | undefined>(undefined);
const isOver = signal(false);

const field = (id: string) => document.querySelector<HTMLInputElement>(`#${id}`);

/** Puts what arrived into the fields: a draft where there is one, else the value. */
function show(): void {
  const load = field("load");
  const title = field("title");
  if (load) load.value = drafts["vehicle.load_kg"] ?? String(job.vehicle.load_kg);
  if (title) title.value = drafts["title"] ?? job.title;
}

function typeLoad(text: string): void {
  const load_kg = Number(text);
  const isValue = text.trim() !== "" && load_kg >= 0 && load_kg <= 10_000;
  const { "vehicle.load_kg": _, ...others } = drafts;
  drafts = isValue ? others : { ...drafts, "vehicle.load_kg": text };
  if (isValue) job = { ...job, vehicle: { ...job.vehicle, load_kg } };
  jobs.saveSheet(job, drafts, `load to ${text} kg`);
}

async function readFile(file: File): Promise<void> {
  try {
    await jobs.importFile(file);
    refused.value = undefined;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    refused.value = { name: file.name, problems: error.problems };
  }
}

async function showVersions(): Promise<void> {
  versions.value = await jobs.versions(jobs.current.value?.id ?? "");
}

const root = document.querySelector<HTMLElement>("main") ?? document.body;
render(
  html`<h1>Jobs</h1>
    <div id="lines"></div>
    <p><label>Load <input id="load" @input=${() => typeLoad(field("load")?.value ?? "")} /></label></p>
    <p>
      <label>
        Title
        <input
          id="title"
          @input=${() => {
            drafts = { ...drafts, title: field("title")?.value ?? "" };
            jobs.saveSheet(job, drafts, "title");
          }}
        />
      </label>
    </p>
    <div id="below"></div>`,
  root,
);
show();

let arrival = jobs.current.value?.arrival;
effect(() => {
  const current = jobs.current.value;
  if (!current || current.arrival === arrival) return;
  arrival = current.arrival;
  ({ job, drafts } = current);
  show();
});

effect(() => {
  const save = () => void jobs.exportFile();
  render(
    html`${viewSaveLine(jobs.status.value, jobs.place.value, save)}
      ${viewConflict(jobs.conflict.value, { onKeepMine: jobs.keepMine, onTakeTheirs: () => void jobs.takeTheirs() })}
      ${viewNews(jobs.news.value, jobs.dismissNews)} ${viewReminder(jobs.reminder.value, save)}
      ${viewFileProblems(refused.value, () => {
        refused.value = undefined;
      })}
      <p id="over">${isOver.value ? "Let go to read the file" : "Nothing is dragged"}</p>`,
    root.querySelector<HTMLElement>("#lines") ?? root,
  );
});

effect(() => {
  const id = jobs.current.value?.id;
  render(
    html`<h2>All jobs</h2>
      ${viewJobList(jobs.list.value, id, {
        onOpen: (chosen) => void jobs.open(chosen),
        onDuplicate: (chosen) => void jobs.duplicate(chosen),
        onArchive: (chosen) => void jobs.archive(chosen),
        onUnarchive: (chosen) => void jobs.unarchive(chosen),
        onRemove: (chosen) => void jobs.remove(chosen),
        onUndoRemove: (chosen) => void jobs.undoRemove(chosen),
        onSaveFile: (chosen) => void jobs.exportFile(chosen),
        onReadFile: (file) => void readFile(file),
      })}
      <h2>Versions</h2>
      <button type="button" @click=${() => void showVersions()}>Show the versions</button>
      ${viewVersions(versions.value, {
        onLook: (number) => void jobs.readVersion(id ?? "", number),
        onRestore: (number) => void jobs.restore(id ?? "", number).then(showVersions),
        onCompare: (number) =>
          void jobs.compare({ id: id ?? "", version: number }, { id: id ?? "" }).then((found) => {
            differences.value = found;
          }),
      })}
      ${differences.value ? viewDifferences(differences.value, { before: "then", after: "now" }) : ""}
      <h2>Safekeeping</h2>
      ${viewSafekeeping(jobs.place.value, jobs.tie.value, jobs.canTie, {
        onSaveFile: () => void jobs.exportFile(),
        onTie: () => void jobs.tieToFile(),
        onUntie: () => void jobs.untieFile(),
        onAllow: () => void jobs.allowFile(),
        onOverwrite: () => void jobs.overwriteFile(),
      })}`,
    root.querySelector<HTMLElement>("#below") ?? root,
  );
});

acceptDroppedFiles(document.body, {
  onOver: (over) => {
    isOver.value = over;
  },
  onFiles: (files) => void Promise.all(files.map(readFile)),
});

/** Runs one case of the contract of stores against the database, from two connections. */
async function runContract(name: string): Promise<void> {
  const found = storeContract.find((each) => each.name === name);
  if (!found) throw new Error(`there is no case ${name}`);
  const [here, there] = [await databaseStore(), await databaseStore()];
  for (const { id } of (await here.list()).heads) await here.erase(id);
  await found.run({ here, there });
  here.close();
  there.close();
}

const storePage = { jobs, runContract, inventedJob, withRecordedRoad };
export type StorePage = typeof storePage;
Object.assign(window, { storePage });
document.body.dataset["ready"] = "yes";
