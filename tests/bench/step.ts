import { demos } from "../../shared/demos/index.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { driveJob } from "../../sim/plan/drive/driveJob.ts";
import { rangeOn } from "../../sim/plan/going/range.ts";
import { createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { cycleTrace } from "../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../support/cycleTexts.ts";
import { median } from "./median.ts";

// What a run costs on this machine: figures to read, never a gate. `npm run bench`.
const TURNS = 9;
const REPETITIONS = 40;

const job = readJob(demos[0].document);
const trace = cycleTrace("wltc-class-3b", cycleTexts);
const steps = trace.time_s.length - 1;
const models = job.packs.map((pack) => prepare(job, pack));
const [model] = models.slice(2);
const channels = createChannels(trace.time_s.length);
let sink = 0; // keeps the work from being dropped

/** Milliseconds of one call in each of several turns of several calls, warm. */
function call_ms(work: () => number, repetitions = REPETITIONS): number[] {
  const turn_ms = () => {
    const begin = process.hrtime.bigint();
    for (let k = 0; k < repetitions; k++) sink += work();
    return Number(process.hrtime.bigint() - begin) / 1e6 / repetitions;
  };
  turn_ms();
  return Array.from({ length: TURNS }, turn_ms);
}

/** The median and the best turn: on a busy machine the best is nearer to what the work itself takes. */
function report(name: string, turns_ms: readonly number[], vehicleSteps: number): void {
  const [usual_ms, best_ms] = [median(turns_ms), Math.min(...turns_ms)];
  const each_ns = (of_ms: number) => `${((1e6 * of_ms) / vehicleSteps).toFixed(0).padStart(5)} ns a step`;
  const times = `${usual_ms.toFixed(2).padStart(7)} ms ${each_ns(usual_ms)}   best ${best_ms.toFixed(2).padStart(6)} ms ${each_ns(best_ms)}`;
  console.log(`  ${name.padEnd(44)}${times}`);
}

const everyPack = (work: (one: (typeof models)[number]) => number) => models.reduce((sum, one) => sum + work(one), 0);
const rangeSteps = everyPack((one) => (rangeOn(one, trace).distance_m / driven_m(one)) * steps);

function driven_m(one: (typeof models)[number]): number {
  return run(one, trace).totals.distance_m;
}

console.log(`${job.title}, WLTC class 3b (${steps} steps of 1 s), ${models.length} packs`);
report(
  "one recorded run",
  call_ms(() => run(model, trace, channels).endSoc_frac),
  steps,
);
report(
  "one run without channels",
  call_ms(() => run(model, trace).endSoc_frac),
  steps,
);
report(
  "five packs, channels in one reused buffer",
  call_ms(() => everyPack((one) => run(one, trace, channels).endSoc_frac)),
  5 * steps,
);
report(
  "five packs, channels made for each",
  call_ms(() => everyPack((one) => run(one, trace, createChannels(trace.time_s.length)).endSoc_frac)),
  5 * steps,
);
report(
  "five packs without channels",
  call_ms(() => everyPack((one) => run(one, trace).endSoc_frac)),
  5 * steps,
);
report(
  "range of five packs (steps to the floor)",
  call_ms(() => everyPack((one) => rangeOn(one, trace).distance_m), 5),
  rangeSteps,
);
report(
  "the whole drive of a job, as the page asks it",
  call_ms(() => driveJob(job, trace, { channels: true }).candidates.length, 5),
  rangeSteps + 5 * steps,
);
if (!Number.isFinite(sink)) throw new Error("a run came to no number");
