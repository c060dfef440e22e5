import { noteForMeter } from "./noteForMeter.ts";

/** One figure from outside and what came out here. */
export interface Pair {
  readonly at: string;
  readonly expected: number;
  readonly found: number;
}

/**
 * Figures of one quantity held against one source. The gate asserts each, and that there were `samples` of them.
 */
export interface Comparison {
  readonly quantity: string;
  readonly source: string;
  /** `difference` where the tolerance is printed digits, in `unit`; else `ratio`. */
  readonly as: "difference" | "ratio";
  readonly unit: string;
  readonly tolerance: number;
  /** Why that tolerance. */
  readonly why: string;
  readonly samples: number;
  readonly pairs: () => readonly Pair[];
}

/** How far a pair is off, in the comparison's own measure; not a number where the figure is none. */
export function errorOf({ as }: Comparison, { expected, found }: Pair): number {
  return Math.abs(as === "difference" ? found - expected : found / expected - 1);
}

/** What a comparison finds wrong, in sentences; nothing where all samples were compared and hold. Leaves a note of each for the meter. */
export function faultsOf(comparison: Comparison): readonly string[] {
  const { samples, tolerance, unit, as } = comparison;
  const pairs = comparison.pairs();
  const of = as === "ratio" ? "as a share" : unit;
  for (const pair of pairs) {
    noteForMeter({ quantity: `${comparison.quantity} (${of})`, error: errorOf(comparison, pair), tolerance });
  }
  const faults = pairs
    .filter((pair) => !(errorOf(comparison, pair) <= tolerance))
    .map(({ at, expected, found }) => `${at}: ${found} ${unit} for ${expected}, ${tolerance} as ${as} allowed`);
  if (pairs.length !== samples) faults.push(`${pairs.length} samples compared, ${samples} wanted`);
  return faults;
}
