import type { Answer } from "./answer.ts";
import type { Band } from "./band.ts";

/**
 * The packs whose verdict may be another one once many variants are driven: those whose band, put together from single effects, ends near
 * the kilometre at which the verdict changes.
 */
export function packsToSample({ packs }: Answer): number[] {
  return packs.flatMap(({ left, verdict, cannot, failsIn }, i) =>
    verdict !== undefined && left && !cannot && !failsIn && isNear(left.tenYearsWinter) ? [i] : [],
  );
}

/**
 * Whether the end of a band that was put together from single effects lies so near to nought that driving many variants may find it on the
 * other side: within half of the way from the value down to it. On roads where a steep piece ends a range the two differ by a third of that.
 */
function isNear({ value, low }: Band): boolean {
  return value >= 0 && Math.abs(low) <= (value - low) / 2;
}
