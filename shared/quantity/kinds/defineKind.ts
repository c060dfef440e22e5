import type { UnitRule } from "./unitRule.ts";

/** One kind of quantity: the unit its key has in the job file, what is possible, and how the trade spells it. */
export interface QuantityKindInfo {
  /** For a sentence: `a gear ratio`. */
  readonly name: string;
  /** Suffix of the key in the job file; empty for a count. */
  readonly suffix: string;
  /** The same unit as people read it. */
  readonly unit: string;
  /** Beyond these it is refused: wide enough for an odd but real vehicle. Assumed, common practice, no source. */
  readonly min: number;
  readonly max: number;
  /** Where nearly all of them lie: used only to guess what was meant. Assumed, common practice, no source. */
  readonly usual: readonly [number, number];
  /** How the units are usually written, for people. */
  readonly spellings: readonly string[];
  /** Spellings understood, tidied as `tidyUnit` does. */
  readonly units: Readonly<Record<string, UnitRule>>;
  /** Units that get mistaken for one another in this kind: `psi` for `bar`. */
  readonly slips?: readonly string[];
}

/** What every kind has, on one line of its entry; the units it is written in stand beside it. */
export function kind(
  name: string,
  suffix: string,
  unit: string,
  min: number,
  max: number,
  usual: readonly [number, number],
  spellings: readonly string[],
) {
  return { name, suffix, unit, min, max, usual, spellings };
}
