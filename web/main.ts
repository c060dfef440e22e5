import { computed } from "@preact/signals-core";
import "./look/tokens.css";
import "./look/page.css";
import "./look/tables.css";
import "./look/fields.css";
import "./look/parts.css";
import "./look/roads.css";
import "./look/versions.css";
import "./charts/charts.css";
import "./look/figureInks.css";
import "./look/answer.css";
import "./look/chapters.css";
import "./look/workings.css";
import "./look/print.css";
import { render } from "lit-html";
import { failureWords } from "../shared/failureWords.ts";
import { emptiedFields } from "./editing/emptied.ts";
import { createJobEditor } from "./editing/jobEditor.ts";
import { onlyEdits } from "./editing/onlyEdits.ts";
import { createFieldContext } from "./fields/fieldContext.ts";
import { keepTracks } from "./log/keepTracks.ts";
import { afterFrame } from "./look/afterFrame.ts";
import { reloadView } from "./look/reloadView.ts";
import { defineValues } from "./notebook/graph/defineValues.ts";
import { createGraph } from "./notebook/graph/graph.ts";
import { keepJobs } from "./notebook/jobs/keepJobs.ts";
import { keepLastOpen } from "./notebook/jobs/lastOpen.ts";
import { firstJob, openFirst } from "./notebook/jobs/openFirst.ts";
import { mount } from "./notebook/mount.ts";
import { browserPlatform, sentPlatform } from "./store/browserPlatform.ts";
import { jobInPage } from "./store/files/sharedPage.ts";
import { openJobs } from "./store/jobs.ts";
import { readElsewhere } from "./worker/readElsewhere.ts";
import { startWorkers } from "./worker/startWorkers.ts";

/** What may be tried out in a page that was sent to be looked at. */
const TRIED_OUT = [
  "usualDay_km",
  "longestDay_km",
  "longestDaysAYear",
  "drivenRoad",
  "units",
  "vehicle.load_kg",
  "allowance.winter_ratio",
  "allowance.aged_frac",
  "conditions.winter.temperature_degC",
  "conditions.winter.heat.power_kW",
  "packs.*.ceiling_frac",
  "pinned",
];

const page = document.querySelector<HTMLElement>("#notebook");
if (!page) throw new Error("the page has no place for the notebook");

try {
  await start(page);
} catch (error) {
  // Nothing of the page is there yet to say it, so it is said here, and the console has the rest.
  render(reloadView(`The notebook could not be opened. ${failureWords(error)}`), page);
  throw error;
}

async function start(page: HTMLElement): Promise<void> {
  const { simulation, roads } = startWorkers(afterFrame);
  const shared = jobInPage(document);
  const jobs = await openJobs(shared ? sentPlatform() : browserPlatform(), readElsewhere(roads));
  if (shared) await jobs.create(shared, "the page it was sent in");
  else await openFirst(jobs);
  if (!shared) keepLastOpen(jobs);
  const opened = jobs.current.peek();
  const whole = createJobEditor({ job: opened?.job ?? (await firstJob()), drafts: {} });
  const jobEditor = shared ? onlyEdits(whole, TRIED_OUT) : whole;
  keepJobs(jobEditor, jobs);
  const context = createFieldContext(jobEditor, roads);
  keepTracks(context.view, jobEditor, jobs);
  const emptied = computed(() => emptiedFields(jobEditor.drafts.value, context.typing.value?.path));
  const values = defineValues(jobEditor.job, context.view, simulation, emptied);
  const graph = createGraph(values, jobEditor.opened);
  mount(page, { graph, jobEditor, context, jobs, isShared: shared !== undefined });
}
