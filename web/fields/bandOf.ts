import { formatNumber } from "../../shared/quantity/formatNumber.ts";
import type { QuantityKind } from "../../shared/quantity/kinds/kinds.ts";

/** As wide as a job's bands may be, in the value's own size to either side. */
const MOST = 2;

/**
 * The band of a typed value as a share of it, as a job keeps it: nothing where none was typed or the value is nothing. A band of more than
 * twice the value to either side is a slip and refused; degrees, whose nought is no nothing, keep the widest there is.
 */
export function bandOf(
  kind: QuantityKind,
  value: number,
  plusMinus: number | undefined,
): { readonly plusMinus_frac?: number; readonly problem?: string } {
  if (plusMinus === undefined || value === 0) return {};
  const share = Math.abs(plusMinus / value);
  if (share <= MOST || kind === "temperature") return { plusMinus_frac: Math.min(MOST, share) };
  return {
    problem: `found a band of ${formatNumber(share, 2)} times the value to either side, at most ${MOST} times it allowed`,
  };
}
