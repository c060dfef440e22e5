import type { Job } from "../../../shared/job/job.ts";
import { type Prepared, prepare, prepareIn } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { type ConditionId, rangeIn_km } from "../answer/conditions.ts";
import type { SampledRange } from "../answer/sampledRange.ts";
import { wintersOf } from "../conditions/condition.ts";
import { drivenRange } from "../unknowns.ts";
import { type Draw, drawVariants } from "./variants.ts";

/**
 * The ranges of one pack in one condition over many variants of its job: see `drawVariants`. 0 km where the car does not drive the road.
 * Yields the share that is done after each variant.
 */
export function* sampleRange(
  job: Job,
  packIndex: number,
  trace: Trace,
  condition: ConditionId,
  draw: Draw,
): Generator<number, SampledRange, void> {
  const { roadEnergy_ratio, jobAt } = drawVariants(job, trace, draw);
  const pack = job.packs[packIndex];
  const at = (of: Job) => (condition === "new" ? undefined : wintersOf(of)?.[condition]);
  const condition0 = at(job);
  const first: Prepared = condition0
    ? { job, pack, condition: condition0, model: prepareIn(job, pack, condition0) }
    : { job, pack, model: prepare(job, pack) };
  const ranges_km = new Float64Array(draw.variants);
  for (let i = 0; i < draw.variants; i++) {
    const variant = jobAt(i);
    const driven = drivenRange(prepareIn(variant, variant.packs[packIndex], at(variant) ?? {}, first), trace);
    const range_km = driven.isStuck ? 0 : driven.range_km / (roadEnergy_ratio?.[i] ?? 1);
    ranges_km[i] = condition0 ? range_km : rangeIn_km(condition, variant.allowance, { range_km });
    yield (i + 1) / draw.variants;
  }
  return { ranges_km: Array.from(ranges_km.sort()) };
}
