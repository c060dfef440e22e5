import { parentPort, workerData } from "node:worker_threads";
import { resultOf } from "../../math/resultOf.ts";
import { drawVariants } from "../../plan/vary/variants.ts";
import { varyPart } from "../../plan/vary/varyPack.ts";
import type { VariantTask, VariantWork } from "./variantTask.ts";

/** Inside a worker: drives the variants that it is sent, a part for each message. */
export function answerVariants(): void {
  const { job, trace, draw } = workerData as VariantWork;
  const variants = drawVariants(job, trace, draw);
  parentPort?.on("message", ({ packIndex, from, to }: VariantTask) => {
    parentPort?.postMessage(resultOf(varyPart(job, packIndex, trace, variants, from, to)));
  });
}
