import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { resultOf } from "../../math/resultOf.ts";
import { drawVariants } from "../../plan/vary/variants.ts";
import { type VariedPack, type VariedPart, variedPack, varyPart } from "../../plan/vary/varyPack.ts";
import { type VariantTask, type VariantWork, variantTasks } from "./variantTask.ts";

/** Samples of road to drive from which on workers are worth their start, a third of a second. */
const WORTH_WORKERS = 500_000;
const MOST_WORKERS = 16;

/** The program's own first file, which a worker begins with too; none where these commands are called by another program. */
let entry: URL | undefined;

/** Says with which file workers begin. */
export function workersBeginWith(url: string): void {
  entry = new URL(url);
}

/**
 * Packs in many variants, on all processors where there is much to drive. The same to the last digit as on one. `onProgress` hears of each pack
 * the share that is done.
 */
export async function varyOnAll(
  work: VariantWork,
  packIndexes: readonly number[],
  onProgress: (packIndex: number, share_frac: number) => void,
  processors = availableParallelism(),
): Promise<VariedPack[]> {
  const { job, trace, draw } = work;
  const isMuch = packIndexes.length * draw.variants * trace.time_s.length >= WORTH_WORKERS;
  const count = entry && isMuch ? Math.min(MOST_WORKERS, processors) : 1;
  const tasks = variantTasks(packIndexes, draw.variants, count);
  const variants = drawVariants(job, trace, draw);
  const parts: VariedPart[] = [];
  const done = new Map<number, number>();
  const report = ({ packIndex, from, to }: VariantTask) => {
    const driven = (done.get(packIndex) ?? 0) + to - from;
    done.set(packIndex, driven);
    onProgress(packIndex, driven / draw.variants);
  };
  if (entry && count > 1) await onWorkers(entry, count, work, tasks, parts, report);
  else
    tasks.forEach((task, k) => {
      parts[k] = resultOf(varyPart(job, task.packIndex, trace, variants, task.from, task.to));
      report(task);
    });
  const ofPack = (packIndex: number) => parts.filter((_, k) => tasks[k].packIndex === packIndex);
  return packIndexes.map((packIndex) => variedPack(job, packIndex, variants, ofPack(packIndex)));
}

/** Each worker takes the next task when it is through with one; a worker that fails ends all. */
async function onWorkers(
  from: URL,
  count: number,
  work: VariantWork,
  tasks: readonly VariantTask[],
  parts: VariedPart[],
  report: (task: VariantTask) => void,
): Promise<void> {
  let next = 0;
  const workers = Array.from({ length: Math.min(count, tasks.length) }, () => begin(from, work));
  const through = (worker: Worker) =>
    new Promise<void>((resolve, reject) => {
      let mine = -1;
      const take = () => {
        mine = next++;
        if (mine >= tasks.length) resolve();
        else worker.postMessage(tasks[mine]);
      };
      worker.on("message", (part: VariedPart) => {
        parts[mine] = part;
        report(tasks[mine]);
        take();
      });
      worker.on("error", reject);
      worker.on("exit", (code) => reject(new Error(`a worker ended with code ${code}`)));
      take();
    });
  try {
    await Promise.all(workers.map(through));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

/** A worker that begins with the program's first file; from a checkout that is TypeScript, which a worker has to be taught first. */
function begin(from: URL, work: VariantWork): Worker {
  if (!from.pathname.endsWith(".ts")) return new Worker(from, { workerData: work });
  const loader = import.meta.resolve("tsx/esm/api");
  const script = `import("${loader}").then(({ register }) => { register(); return import("${from.href}"); })`;
  return new Worker(script, { workerData: work, eval: true });
}
