/** Longest step under way, and standing still, where nothing changes but charge and heat, and those slowly. */
const LONGEST_s = 1;
const LONGEST_STAND_s = 60;
/** A step counts as no longer than that in spite of rounding. */
const ROUNDING_ratio = 1e-9;

/** The number of equal steps in which an interval between two target speeds is driven: each of at most 1 s, or 60 s at rest. */
export function stepsIn(dt_s: number, from_mps: number, to_mps: number): number {
  const longest_s = from_mps === 0 && to_mps === 0 ? LONGEST_STAND_s : LONGEST_s;
  return Math.max(1, Math.ceil(dt_s / longest_s - ROUNDING_ratio));
}
