import { demos } from "../../shared/demos/index.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { resample } from "../../sim/trace/resample.ts";
import { cycleTrace } from "../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../support/cycleTexts.ts";

// By how much energy a kilometre comes out low where a cycle is known each so many seconds only: the table in
// sim/trace/thinSampling.ts is made of the first job's rows. `npx tsx tests/bench/thinSampling.ts`.
const SPACINGS_s = [2, 3, 5, 10, 20, 30, 60];
const CYCLES = ["hwfet", "udds", "us06", "nycc", "wltc-class-3b", "nedc"];

for (const { document } of demos) {
  const job = readJob(document);
  const model = prepare(job, job.packs[job.packs.length - 1]);
  console.log(job.title);
  for (const id of CYCLES) {
    const trace = cycleTrace(id, cycleTexts);
    const perMetre_J = (every_s: number) => {
      const { totals } = run(model, resample(trace, every_s));
      return totals.terminal_J / totals.distance_m;
    };
    const whole_J = perMetre_J(1);
    const low = SPACINGS_s.map((s) => `${s} s ${(100 * (1 - perMetre_J(s) / whole_J)).toFixed(1)} %`);
    console.log(`  ${id.padEnd(14)} ${low.join("   ")}`);
  }
}
