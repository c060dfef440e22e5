import type { Job } from "../../../shared/job/job.ts";
import type { Draw } from "../../plan/vary/variants.ts";
import type { Trace } from "../../trace/trace.ts";

/** What every worker drives variants of. */
export interface VariantWork {
  readonly job: Job;
  readonly trace: Trace;
  readonly draw: Draw;
}

/** The variants of one pack from one to before another. */
export interface VariantTask {
  readonly packIndex: number;
  readonly from: number;
  readonly to: number;
}

/** Variants to a task, so that progress is reported often and a worker that is slower takes fewer. */
const MOST = 512;

/** All variants of these packs as tasks for so many workers, four for each of them or more. */
export function variantTasks(packIndexes: readonly number[], variants: number, workers: number): VariantTask[] {
  const each = Math.max(1, Math.min(MOST, Math.ceil((packIndexes.length * variants) / (4 * workers))));
  return packIndexes.flatMap((packIndex) =>
    Array.from({ length: Math.ceil(variants / each) }, (_, k) => ({
      packIndex,
      from: k * each,
      to: Math.min(variants, (k + 1) * each),
    })),
  );
}
