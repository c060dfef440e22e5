import { layoutName } from "../../battery/layoutName.ts";
import type { Layout } from "./layoutsOf.ts";
import type { RuledOut } from "./ruledOut.ts";

/** One line of a list of layouts: one that fits or is nearly one, or a span of those that are ruled out by the same. */
export interface LayoutRow {
  readonly name: string;
  /** Absent for a span. */
  readonly layout?: Layout;
  readonly out?: RuledOut;
}

/** Volts do not hang on the strings. */
const BY_SERIES: readonly RuledOut["fault"][] = [
  "aboveController",
  "belowController",
  "aboveCharger",
  "belowCharger",
  "aboveConverter",
  "belowConverter",
];

/**
 * Layouts as a list that can be read: each that fits, with its figures; of those that are ruled out one after another by the same fault a
 * single line, with the reason of the one nearest to fitting.
 */
export function layoutRows(all: readonly Layout[]): LayoutRow[] {
  const rows: LayoutRow[] = [];
  let at = 0;
  while (at < all.length) {
    const { out } = all[at];
    let end = at + 1;
    if (out) while (end < all.length && isOfSpan(all[at], all[end])) end++;
    rows.push(
      end === at + 1 ? { name: all[at].pack.name, layout: all[at], ...(out && { out }) } : span(all.slice(at, end)),
    );
    at = end;
  }
  return rows;
}

/** The same fault, of any number in series where the strings make no difference, else of the same number. */
function isOfSpan(first: Layout, next: Layout): boolean {
  if (first.out === undefined || next.out?.fault !== first.out.fault) return false;
  return BY_SERIES.includes(first.out.fault) || next.pack.seriesModules === first.pack.seriesModules;
}

function span(layouts: readonly Layout[]): LayoutRow {
  const [first] = layouts;
  const last = layouts[layouts.length - 1];
  const fault = first.out?.fault;
  if (fault !== undefined && BY_SERIES.includes(fault)) {
    // Too few volts are nearest to fitting at the most in series, too many at the fewest.
    const nearest = fault.startsWith("below") ? last : first;
    const [from, to] = [first.pack.seriesModules, last.pack.seriesModules];
    return { name: from === to ? `${from}s` : `${from}s to ${to}s`, ...(nearest.out && { out: nearest.out }) };
  }
  const name = (layout: Layout) => layoutName(layout.pack.seriesModules, layout.pack.parallelModules);
  const isHeavy = fault !== "peakCurrent" && fault !== "continuousCurrent" && fault !== "sagsBelowController";
  const nearest = isHeavy ? first : last;
  return { name: `${name(first)} to ${name(last)}`, ...(nearest.out && { out: nearest.out }) };
}
