import { effect } from "@preact/signals-core";
import "./look/tokens.css";
import "./look/page.css";
import "./look/tables.css";
import "./look/fields.css";
import "./look/parts.css";
import "./look/roads.css";
import "./look/versions.css";
import "./charts/charts.css";
import "./look/print.css";
import { demos } from "../shared/demos/index.ts";
import { readJob } from "../shared/job/readJob.ts";
import { clearBench } from "./inputs/bench.ts";
import { createPaper } from "./inputs/form.ts";
import { createDesk } from "./notebook/desk.ts";
import { createGraph } from "./notebook/graph.ts";
import { keepJobs } from "./notebook/keepJobs.ts";
import { keepTracks } from "./notebook/keepTracks.ts";
import { mount } from "./notebook/mount.ts";
import { openFirst } from "./notebook/openFirst.ts";
import { defineValues } from "./notebook/values.ts";
import { sections } from "./sections/index.ts";
import { browserSurroundings } from "./store/browserSurroundings.ts";
import { openJobs } from "./store/jobs.ts";
import { readElsewhere } from "./worker/readElsewhere.ts";
import { startRoads } from "./worker/startRoads.ts";
import { startSimulation } from "./worker/startSimulation.ts";

const page = document.querySelector<HTMLElement>("#notebook");
if (!page) throw new Error("the page has no place for the notebook");

try {
  await start(page);
} catch (error) {
  // Nothing of the page is there yet to say it, so it is said here, and the console has the rest.
  page.textContent = `The notebook could not be opened: ${error instanceof Error ? error.message : String(error)}`;
  throw error;
}

async function start(page: HTMLElement): Promise<void> {
  const jobs = await openJobs(browserSurroundings(), readElsewhere(startRoads()));
  await openFirst(jobs);
  const opened = jobs.current.peek();
  const desk = createDesk({ job: opened?.job ?? readJob(demos[0].document), drafts: {} });
  keepJobs(desk, jobs);
  const paper = createPaper(desk);
  const { view, typedHere } = paper;
  effect(() => {
    // Another job: what was looked at in the one before has no meaning here.
    const current = jobs.current.value;
    if (current === undefined) return;
    typedHere.clear();
    clearBench(view.bench);
    view.packIndex.value = undefined;
  });
  keepTracks(paper.view.bench.log, desk, paper.view.roadId, jobs);
  const graph = createGraph([...defineValues(desk.job, view, startSimulation()), ...sections]);
  mount(page, { sections, graph, desk, paper, jobs });
}
