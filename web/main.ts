import "./look/tokens.css";
import "./look/page.css";
import "./look/fields.css";
import "./look/print.css";
import { demos } from "../shared/demos/index.ts";
import { readJob } from "../shared/job/readJob.ts";
import { createPaper } from "./inputs/form.ts";
import { createDesk } from "./notebook/desk.ts";
import { createGraph } from "./notebook/graph.ts";
import { mount } from "./notebook/mount.ts";
import { defineValues } from "./notebook/values.ts";
import { sections } from "./sections/index.ts";
import { startSimulation } from "./worker/startSimulation.ts";

const page = document.querySelector<HTMLElement>("#notebook");
if (!page) throw new Error("the page has no place for the notebook");

const desk = createDesk({ job: readJob(demos[0]?.document), drafts: {} });
const paper = createPaper(desk);
const graph = createGraph([...defineValues(desk.job, paper.view, startSimulation()), ...sections]);
mount(page, { sections, graph, desk, paper });
