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
import { packStudy } from "../../sim/plan/layouts/packStudy.ts";
import { varyPack } from "../../sim/plan/vary/varyPack.ts";
import { yearRanges } from "../../sim/plan/year/driveYear.ts";
import { runSteps } from "../../sim/route/log/steps.ts";
import { steadySpeeds_kmh } from "../../web/sections/parts/steadySpeeds.ts";
import type { Values } from "../../web/sections/parts/values.ts";
import { cycleTexts } from "./cycleTexts.ts";

/** The year of a job over a road. */
function yearFor(job: Job, road: Trace): Values["year"] {
  const ranges = yearRanges(job, road);
  if (!ranges) throw new Error("nobody cancelled");
  return yearOf(job, ranges);
}

/** Every value a section may ask for, worked by the simulation itself, as the page would have them. */
export function sectionValues(job: Job, changes: Partial<Values> = {}): Values {
  const road = roadTrace(job.roads[0], cycleTexts);
  const runs = driveJob(job, road, { channels: true });
  const packIndex = Math.max(
    0,
    runs.candidates.findIndex(({ name }) => name === runs.enough.pack),
  );
  const inQuestion = packsInQuestion(job, runs.candidates);
  const packUnknowns = unknownsOfPacks(job, inQuestion, road);
  const charging = chargePlan({ ...job, units: changes.units ?? job.units }, runs.candidates);
  return {
    job,
    machine: job,
    use: job,
    units: "metric",
    roadId: job.roads[0].id,
    road,
    runs,
    judged: runs.candidates,
    year: yearFor(job, road),
    inConditions: { today: runs.candidates, drives: [] },
    enough: runs.enough,
    chargePlan: charging,
    costPlan: costPlan(job, runs.candidates, charging),
    along: "time",
    packIndex,
    answerIndex: packIndex,
    steady: job.packs.map((_, index) => steadyTable(job, index, steadySpeeds_kmh(changes.units ?? "metric"))),
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
    motorSurface: motorSurface(job, packIndex),
    gearbox: gearboxStudy(job, packIndex, road),
    currentsPlan: currentsPlan(job, packIndex, road),
    get packStudy() {
      return packStudy(job, road);
    },
    get varied() {
      return runSteps(varyPack(job, packIndex, road, { variants: 16, seed: 1 }));
    },
    unknowns: packUnknowns[packIndex],
    packsInQuestion: inQuestion,
    packUnknowns,
    answer: answerFor(job, runs.candidates, packUnknowns),
    ...changes,
  };
}
