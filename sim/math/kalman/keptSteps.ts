import type { StepMatrices } from "./overStep.ts";

/** Steps kept; a log of even sampling has a handful, one by distance some hundreds. */
const MOST = 8192;

/**
 * The matrices of a step, made once for each length: `make` is given the length rounded to one part in `perUnit`, and what it made is kept,
 * so that every run of a filter over the same log shares it. All are forgotten where they become too many.
 */
export function keptSteps(perUnit: number, make: (step: number) => StepMatrices): (step: number) => StepMatrices {
  const kept = new Map<number, StepMatrices>();
  return (step) => {
    const key = Math.round(step * perUnit);
    const known = kept.get(key);
    if (known) return known;
    if (kept.size >= MOST) kept.clear();
    const made = make(key / perUnit);
    kept.set(key, made);
    return made;
  };
}
