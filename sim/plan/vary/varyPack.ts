import type { Job } from "../../../shared/job/job.ts";
import { type Prepared, prepare, prepareIn } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { type ByCondition, byCondition, rangeIn_km } from "../answer/conditions.ts";
import { wintersOf } from "../conditions/condition.ts";
import { drivenRange, type OpenValue } from "../unknowns.ts";
import { type Influence, influenceOf, type Spread, spreadOf } from "./spread.ts";
import { type Draw, drawVariants, type Variants } from "./variants.ts";

/** One open value, by what it does. */
export interface VariedInput extends Influence {
  /** Absent for what the log behind the road leaves open. */
  readonly open?: OpenValue;
  /** By how many kilometres knowing it would narrow what is left of the day, from its twentieth to its nineteen twentieths. */
  readonly gain_km: number;
}

/** A pack over many variants of what is not known of its job. */
export interface VariedPack {
  readonly pack: string;
  /** Variants in which the car drives the road at all; the others have no kilometres. */
  readonly driving: number;
  readonly variants: number;
  /** Left of the usual day on coming home; absent where no variant drives. */
  readonly left_km?: ByCondition<Spread>;
  /** Share of all variants that come home with something left. */
  readonly home_frac: ByCondition<number>;
  /** What matters most first, for the day at ten years in winter. */
  readonly inputs: readonly VariedInput[];
}

/** Some of the variants, driven. */
export interface VariedPart {
  /** Those in which the car drives the road, by their number among all. */
  readonly drove: readonly number[];
  /** Left of the usual day in each of these. */
  readonly left_km: ByCondition<readonly number[]>;
}

/** One pack driven in many variants of its job: see `drawVariants`. Yields the share that is done after each variant. */
export function* varyPack(job: Job, packIndex: number, trace: Trace, draw: Draw): Generator<number, VariedPack, void> {
  const variants = drawVariants(job, trace, draw);
  return variedPack(job, packIndex, variants, [yield* varyPart(job, packIndex, trace, variants, 0, variants.count)]);
}

/** The variants from one to before another of all those that are drawn: a part of what `variedPack` puts together. Yields the share of it that is done. */
export function* varyPart(
  job: Job,
  packIndex: number,
  trace: Trace,
  { roadEnergy_ratio, jobAt }: Variants,
  from: number,
  to: number,
): Generator<number, VariedPart, void> {
  const first: Prepared = { job, pack: job.packs[packIndex], model: prepare(job, job.packs[packIndex]) };
  const left_km = byCondition((): number[] => []);
  const drove: number[] = [];
  for (let i = from; i < to; i++) {
    const variant = jobAt(i);
    const { range_km, isStuck } = drivenRange(prepare(variant, variant.packs[packIndex], first), trace);
    if (!isStuck && range_km > 0) {
      drove.push(i);
      const winters = wintersOf(variant);
      byCondition((condition) => {
        const driven_km =
          condition === "new" || !winters
            ? rangeIn_km(condition, variant.allowance, { range_km })
            : drivenRange(prepareIn(variant, variant.packs[packIndex], winters[condition], first), trace).range_km;
        left_km[condition].push(driven_km / (roadEnergy_ratio?.[i] ?? 1) - job.usualDay_km);
      });
    }
    yield (i + 1 - from) / (to - from);
  }
  return { drove, left_km };
}

/**
 * What the variants of a pack come to, from parts that follow one another. Deciding is the usual day at ten years in winter, as in the answer.
 */
export function variedPack(
  job: Job,
  packIndex: number,
  { count, opens, drawn, roadEnergy_ratio }: Variants,
  parts: readonly VariedPart[],
): VariedPack {
  const drove = parts.flatMap((part) => part.drove);
  const left = byCondition((condition) => parts.flatMap((part) => part.left_km[condition]));
  const spreads = drove.length > 0 ? byCondition((condition) => spreadOf(left[condition])) : undefined;
  const decides = spreads?.tenYearsWinter;
  const width_km = decides ? decides.p95 - decides.p5 : 0;
  const inputOf = (values: readonly number[], open?: OpenValue): VariedInput => {
    const influence = influenceOf(
      drove.map((i) => values[i]),
      left.tenYearsWinter,
    );
    return { ...influence, ...(open && { open }), gain_km: (1 - influence.left_frac) * width_km };
  };
  const inputs = [
    ...opens.map((open, k) => inputOf(drawn[k], open)),
    ...(roadEnergy_ratio ? [inputOf(roadEnergy_ratio)] : []),
  ];
  return {
    pack: job.packs[packIndex].name,
    driving: drove.length,
    variants: count,
    ...(spreads && { left_km: spreads }),
    home_frac: byCondition((condition) => left[condition].filter((left_km) => left_km >= 0).length / count),
    inputs: inputs.sort((a, b) => Math.abs(b.rank_coeff) - Math.abs(a.rank_coeff)),
  };
}
