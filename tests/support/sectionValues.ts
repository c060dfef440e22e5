import type { Job } from "../../shared/job/job.ts";
import {
  answerFor,
  chargePlan,
  costPlan,
  driveJob,
  packsInQuestion,
  roadTrace,
  type Trace,
  unknownsOfPacks,
  yearOf,
} from "../../sim/index.ts";
import { currentsPlan } from "../../sim/plan/currents/currentsPlan.ts";
import { motorSurface } from "../../sim/plan/drive/motorSurface.ts";
import { gearboxStudy } from "../../sim/plan/gearbox/gearboxStudy.ts";
import { steadyTable } from "../../sim/plan/going/steadyTable.ts";
import { heatLines } from "../../sim/plan/heat/heatLines.ts";
import { daysFailed } from "../../sim/plan/layouts/daysFailed.ts";
import { packStudy } from "../../sim/plan/layouts/packStudy.ts";
import { varyPack } from "../../sim/plan/vary/varyPack.ts";
import { driveWeeks } from "../../sim/plan/week/driveWeek.ts";
import { yearRanges } from "../../sim/plan/year/driveYear.ts";
import { packLife } from "../../sim/plan/years/packLife.ts";
import { runSteps } from "../../sim/route/log/steps.ts";
import { steadySpeeds_kmh } from "../../web/sections/parts/steadySpeeds.ts";
import type { Values } from "../../web/sections/parts/values.ts";
import { cycleTexts } from "./cycleTexts.ts";

/** What the simulation says of a job, each part driven when it is first asked for and then kept: no units are in it. */
function drivenOf(job: Job) {
  const road = roadTrace(job.roads[0], cycleTexts);
  const runs = driveJob(job, road, { channels: true });
  const packIndex = Math.max(
    0,
    runs.candidates.findIndex(({ name }) => name === runs.enough.pack),
  );
  const inQuestion = packsInQuestion(job, runs.candidates);
  const gearbox = once(() => gearboxStudy(job, packIndex, road));
  const study = once(() => packStudy(job, road));
  const packUnknowns = once(() => unknownsOfPacks(job, inQuestion, road));
  return {
    road,
    runs,
    packIndex,
    inQuestion,
    packUnknowns,
    year: once(() => yearFor(job, road)),
    week: once(() => driveWeeks(job, new Map(job.roads.map((each) => [each.id, roadTrace(each, cycleTexts)])))),
    answer: once(() => answerFor(job, runs.candidates, packUnknowns())),
    motorSurface: once(() => motorSurface(job, packIndex)),
    gearbox,
    heatLines: once(() => heatLines(job, packIndex, road, gearbox().heat.study.hill)),
    currentsPlan: once(() => currentsPlan(job, packIndex, road)),
    packStudy: study,
    besideDays: once(() => {
      const packs = study().beside.map(({ pack }) => pack);
      return daysFailed({ ...job, packs }, road);
    }),
    packLife: once(() => packLife(job, packIndex, road)),
    varied: once(() => runSteps(varyPack(job, packIndex, road, { variants: 16, seed: 1 }))),
  };
}

function once<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
}

/** The year of a job over a road. */
function yearFor(job: Job, road: Trace): Values["year"] {
  return yearOf(job, yearRanges(job, road));
}

const driven = new Map<string, ReturnType<typeof drivenOf>>();

/** Every value a section may ask for, worked by the simulation itself, as the page would have them. */
export function sectionValues(job: Job, changes: Partial<Values> = {}): Values {
  const key = JSON.stringify(job);
  const of = driven.get(key) ?? drivenOf(job);
  driven.set(key, of);
  const { road, runs, packIndex } = of;
  const units = changes.units ?? "metric";
  const charging = chargePlan({ ...job, units: changes.units ?? job.units }, runs.candidates);
  const values: Values = {
    job,
    machine: job,
    use: job,
    units: "metric",
    roadId: job.roads[0].id,
    road,
    runs,
    judged: runs.candidates,
    sampled: [],
    get year() {
      return of.year();
    },
    get week() {
      return of.week();
    },
    inConditions: { today: runs.candidates, drives: [] },
    enough: runs.enough,
    chargePlan: charging,
    costPlan: costPlan(job, runs.candidates, charging),
    along: "time",
    packIndex,
    answerIndex: packIndex,
    get steady() {
      return job.packs.map((_, index) => steadyTable(job, index, steadySpeeds_kmh(units)));
    },
    charts: [
      { x: "time", y: "batteryCurrent", packs: [], caption: "" },
      {
        x: "motorSpeed",
        y: "motorTorque",
        colour: "motorLoss",
        packs: [job.packs[0].name],
        caption: "Where it is lost",
      },
    ],
    get heatLines() {
      return of.heatLines();
    },
    get motorSurface() {
      return of.motorSurface();
    },
    get gearbox() {
      return of.gearbox();
    },
    get currentsPlan() {
      return of.currentsPlan();
    },
    get packStudy() {
      return of.packStudy();
    },
    get besideDays() {
      return of.besideDays();
    },
    get packLife() {
      return of.packLife();
    },
    get varied() {
      return of.varied();
    },
    get unknowns() {
      return of.packUnknowns()[packIndex];
    },
    packsInQuestion: of.inQuestion,
    get packUnknowns() {
      return of.packUnknowns();
    },
    get answer() {
      return of.answer();
    },
  };
  // Getters stay getters: what nobody asks for is not driven.
  return Object.defineProperties(values, Object.getOwnPropertyDescriptors(changes)) as Values;
}
