import type { Message } from "../../../shared/quantity/message.ts";
import type { Candidate } from "../driveReport.ts";
import type { Unknown } from "../unknowns.ts";
import { type PackAnswer, packAnswer, type Use } from "./packAnswer.ts";
import type { SampledRange } from "./sampledRange.ts";
import { type Settlement, settlementOf, type WorthMeasuring, worthMeasuring } from "./settle.ts";
import { verdicts } from "./verdicts.ts";

/** The answer to "how much battery is enough", from which headline, sentence, picture and table are made. */
export interface Answer {
  readonly day_km: number;
  readonly longestDay_km?: number;
  readonly longestDaysAYear?: number;
  /** In the order of the job. */
  readonly packs: readonly PackAnswer[];
  /** False while what is not known has not been driven: bands are then empty, and verdicts that hang on them are not given. */
  readonly isBandKnown: boolean;
  /** No pack that may be used drives this road; why, for the one that comes nearest. */
  readonly cannot?: Message;
  /** The pack spoken of: the smallest that does what is asked, or else the one that goes furthest. None where no pack may be used. */
  readonly recommended?: number;
  /** The smallest pack that does what is asked, whether with the whole band or only just. */
  readonly smallest?: number;
  /** The smallest pack that is enough with the whole band. */
  readonly enough?: number;
  readonly largest?: Largest;
  /** What would settle the verdict on each pack that is only just enough. */
  readonly settlements: readonly (Settlement | undefined)[];
  /** What to measure first, for the pack that is recommended; empty while the band is not known. */
  readonly measureFirst: readonly WorthMeasuring[];
}

/** What the pack that the client asked for carries for nothing, or else the largest. */
interface Largest {
  readonly index: number;
  /** Usual days of driving that are left on coming home: at ten years in winter, and new. */
  readonly unusedDays: { readonly low: number; readonly high: number };
  /** How much more it weighs than the pack that is recommended. */
  readonly heavier_kg: number;
}

/**
 * The answer for a use, from the drives of its packs and from what the values that nobody measured do to each of them.
 * Pure and quick: a change of the day drives nothing anew. Unknowns of another number of packs were driven before a pack came or went,
 * and count as not driven yet. Where many variants of a pack have been driven (`sampled`), its band at ten years in winter is theirs, and with
 * it the verdict.
 */
export function answerFor(
  use: Use,
  candidates: readonly Candidate[],
  driven: readonly (readonly Unknown[])[] | undefined,
  sampled: readonly (SampledRange | undefined)[] = [],
): Answer {
  const unknowns = driven?.length === candidates.length ? driven : undefined;
  const isBandKnown = unknowns !== undefined;
  const judged = candidates.map((candidate, i) => packAnswer(use, i, candidate, unknowns?.[i], unknowns && sampled[i]));
  const found = verdicts(judged, isBandKnown);
  const packs: PackAnswer[] = judged.map((pack, i) => (found[i] === undefined ? pack : { ...pack, verdict: found[i] }));
  const bySize = packs.map((_, i) => i).sort((a, b) => packs[a].usable_kWh - packs[b].usable_kWh);
  const usable = bySize.filter((i) => packs[i].stop === undefined);
  const smallest = usable.find((i) => packs[i].verdict !== "not enough");
  const enough = usable.find((i) => packs[i].verdict === "enough");
  const recommended = smallest ?? furthest(usable, packs, candidates);
  const isStuck = usable.every((i) => packs[i].cannot && !packs[i].left);
  const cannot = isStuck && recommended !== undefined ? packs[recommended].cannot : undefined;
  const asked = usable.findLast((i) => packs[i].isAskedFor);
  const largest = largestOf(use.usualDay_km, packs, asked ?? usable.at(-1), recommended);
  return {
    day_km: use.usualDay_km,
    ...(use.longestDay_km !== undefined && { longestDay_km: use.longestDay_km }),
    ...(use.longestDaysAYear !== undefined && { longestDaysAYear: use.longestDaysAYear }),
    packs,
    isBandKnown,
    ...(cannot && { cannot }),
    ...(recommended !== undefined && { recommended }),
    ...(smallest !== undefined && { smallest }),
    ...(enough !== undefined && { enough }),
    ...(largest && { largest }),
    settlements: packs.map((pack, i) =>
      pack.verdict === "only just" && unknowns ? settlementOf(use, pack, candidates[i], unknowns[i]) : undefined,
    ),
    measureFirst:
      recommended !== undefined && unknowns
        ? worthMeasuring(use, packs[recommended], candidates[recommended], unknowns[recommended])
        : [],
  };
}

/** Of the packs that may be used, the one that truly goes furthest: one that keeps up with the road before one that does not. */
function furthest(usable: readonly number[], packs: readonly PackAnswer[], candidates: readonly Candidate[]) {
  const rank = (i: number) => (packs[i].range === undefined ? 0 : packs[i].cannot ? 1 : 2);
  return usable.reduce<number | undefined>((best, i) => {
    if (best === undefined || rank(i) > rank(best)) return i;
    return rank(i) === rank(best) && candidates[i].range_km > candidates[best].range_km ? i : best;
  }, undefined);
}

function largestOf(
  day_km: number,
  packs: readonly PackAnswer[],
  index: number | undefined,
  recommended: number | undefined,
): Largest | undefined {
  if (index === undefined || recommended === undefined || index === recommended) return undefined;
  const { left, cannot, mass_kg } = packs[index];
  if (!left || cannot || left.tenYearsWinter.value < 0 || mass_kg < packs[recommended].mass_kg) return undefined;
  return {
    index,
    unusedDays: { low: left.tenYearsWinter.value / day_km, high: left.new.value / day_km },
    heavier_kg: mass_kg - packs[recommended].mass_kg,
  };
}
