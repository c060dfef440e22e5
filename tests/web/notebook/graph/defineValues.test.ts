import { signal } from "@preact/signals-core";
import { expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { chapters } from "../../../../web/chapters/index.ts";
import { EmptyFields } from "../../../../web/editing/emptied.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { defineValues } from "../../../../web/notebook/graph/defineValues.ts";
import { createGraph } from "../../../../web/notebook/graph/graph.ts";
import { sections } from "../../../../web/sections/index.ts";
import type { SimulationApi } from "../../../../web/worker/api.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const never = new Promise<never>(() => {});
/** A simulation that is asked and does not answer. */
const silent: SimulationApi = {
  road: () => never,
  drive: () => never,
  conditions: () => never,
  yearRanges: () => never,
  weeks: () => never,
  steady: () => never,
  motorSurface: () => never,
  gearbox: () => never,
  heatLines: () => never,
  currents: () => never,
  packStudy: () => never,
  daysFailed: () => never,
  packLife: () => never,
  vary: () => never,
  unknowns: () => never,
  sampleRanges: () => never,
};

/** How "machine" and "use" stand while these fields are empty. */
function standing(...emptied: readonly string[]) {
  const { jobEditor, view } = createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads);
  const graph = createGraph(defineValues(jobEditor.job, view, silent, signal(emptied)));
  return ["machine", "use"].map((name) => {
    const reading = graph.read(name).value;
    return reading.state === "failed" && reading.error instanceof EmptyFields ? reading.message : reading.state;
  });
}

it("has a value of its own name for every section and chapter beside those that they ask for", () => {
  const { jobEditor, view } = createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads);
  const graph = createGraph(defineValues(jobEditor.job, view, silent, signal([])));
  expect(() => graph.add([...sections, ...chapters])).not.toThrow();
  graph.stop();
});

it("waits for an emptied wheel radius, by name, in all that depends on it", () => {
  const waiting = "Waiting for “Rolling radius of the tyre”: empty";
  expect(standing("vehicle.tyres.loadedRadius_mm")).toEqual([waiting, waiting]);
});

it("drives the car on while only the usual day is empty", () => {
  expect(standing("usualDay_km")).toEqual(["ready", "Waiting for “Usual day”: empty"]);
});

it("waits for nothing where no field is empty", () => {
  expect(standing()).toEqual(["ready", "ready"]);
});

it("gives no value the name of a section or a chapter, which stand in the same graph", async () => {
  const [{ sections }, { chapters }] = await Promise.all([
    import("../../../../web/sections/index.ts"),
    import("../../../../web/chapters/index.ts"),
  ]);
  const { jobEditor, view } = createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads);
  const graph = createGraph(defineValues(jobEditor.job, view, silent));
  const parts = [...sections, ...chapters].map(({ name }) => ({ name, from: signal(0) }));
  expect(() => graph.add(parts)).not.toThrow();
});

it("asks for the variants of what is not known only while their working is open", async () => {
  const { jobEditor, view } = createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads);
  const asked: string[] = [];
  const vary = async () => {
    asked.push("vary");
    return {} as never;
  };
  const ofValues = defineValues(jobEditor.job, view, { ...silent, vary });
  const known = ["sized", "answerIndex", "road", "packUnknowns"];
  const graph = createGraph([
    ...known.map((name) => ({ name, from: signal(name === "sized" ? demoJob() : 0) })),
    ...ofValues.filter(({ name }) => name === "varied" || name === "areUnknownsOpen"),
  ]);
  await expect.poll(() => graph.read("varied").value).toEqual({ state: "ready", value: undefined, isLate: false });
  expect(asked).toEqual([]);
  view.openWorkings.value = new Set(["whatIsOpen"]);
  expect(asked).toEqual(["vary"]);
  graph.stop();
});

it("drives a week with the one recommended pack while its working is closed, with all while it is open, and none without trips", async () => {
  const van = demos.findIndex(({ id }) => id === "bakery-van");
  const askedFor = async (job: Job) => {
    const { jobEditor, view } = createFieldContext(createJobEditor({ job, drafts: {} }), noRoads);
    const asked: (readonly number[])[] = [];
    const weeks: SimulationApi["weeks"] = async (whole, packIndexes) => {
      expect(whole.roads.map(({ id }) => id)).toEqual(["shops", "udds", "market"]);
      asked.push(packIndexes);
      return undefined;
    };
    const ofValues = defineValues(jobEditor.job, view, { ...silent, weeks }, signal([]));
    const parts = ["job", "emptied", "weekJob", "week", "isWeekOpen"];
    const graph = createGraph([
      { name: "answerIndex", from: signal(2) },
      ...ofValues.filter(({ name }) => parts.includes(name)),
    ]);
    await expect.poll(() => graph.read("week").value).toEqual({ state: "ready", value: undefined, isLate: false });
    view.openWorkings.value = new Set(["theWeek"]);
    graph.stop();
    return asked;
  };
  expect(await askedFor(demoJob(van))).toEqual([[2], [0, 1, 2, 3]]);
  const { week: _week, ...without } = demoJob(van);
  expect(await askedFor(without)).toEqual([]);
});
