import type { Trace } from "./trace.ts";

/** Samples up to this far apart leave nothing out that matters: energy comes out 1 % low at most, below. */
const DENSE_s = 2;

/**
 * By how much the energy of a drive comes out low where it is known each so many seconds only and is driven on straight lines between:
 * at least as on the highway cycle (HWFET), at most as in town (UDDS). From our own runs of the first invented job with its largest
 * pack, `tests/bench/thinSampling.ts`; other cars lie within about half and once as much, and stop-and-go (NYCC) loses up to twice as much.
 */
const TABLE: readonly { readonly every_s: number; readonly least_frac: number; readonly most_frac: number }[] = [
  { every_s: 1, least_frac: 0, most_frac: 0 },
  { every_s: 2, least_frac: 0.001, most_frac: 0.01 },
  { every_s: 5, least_frac: 0.004, most_frac: 0.037 },
  { every_s: 10, least_frac: 0.013, most_frac: 0.078 },
  { every_s: 20, least_frac: 0.02, most_frac: 0.123 },
  { every_s: 30, least_frac: 0.026, most_frac: 0.172 },
  { every_s: 60, least_frac: 0.029, most_frac: 0.213 },
];

export interface ThinSampling {
  /** Share of the time under way that lies between samples more than 2 s apart. */
  readonly share_frac: number;
  /** How far apart the samples are there: half of that time lies in gaps no longer than this. */
  readonly every_s: number;
  /** By how much the energy of the whole road is likely low. */
  readonly least_frac: number;
  readonly most_frac: number;
}

/** How thinly a road under way was sampled, and what that likely costs; undefined where hardly any of it (less than 5 %) was. */
export function thinSampling({ time_s, speed_mps, restAdded }: Trace): ThinSampling | undefined {
  // The pieces from and to rest are made of straight lines on purpose.
  const first = restAdded !== undefined && restAdded.before_s > 0 ? 2 : 1;
  const last = time_s.length - (restAdded !== undefined && restAdded.after_s > 0 ? 2 : 1);
  const gaps_s: number[] = [];
  let moving_s = 0;
  let thin_s = 0;
  for (let i = first; i <= last; i++) {
    if (speed_mps[i - 1] === 0 && speed_mps[i] === 0) continue;
    const gap_s = time_s[i] - time_s[i - 1];
    moving_s += gap_s;
    if (gap_s <= DENSE_s) continue;
    thin_s += gap_s;
    gaps_s.push(gap_s);
  }
  if (thin_s < 0.05 * moving_s || thin_s === 0) return undefined;
  const share_frac = thin_s / moving_s;
  const every_s = halfOfTime_s(gaps_s, thin_s);
  const { least_frac, most_frac } = lowBy(every_s);
  return { share_frac, every_s, least_frac: share_frac * least_frac, most_frac: share_frac * most_frac };
}

/** The gap up to which half of the time in gaps lies. */
function halfOfTime_s(gaps_s: readonly number[], total_s: number): number {
  let sum_s = 0;
  for (const gap_s of gaps_s.toSorted((a, b) => a - b)) {
    sum_s += gap_s;
    if (sum_s >= 0.5 * total_s) return gap_s;
  }
  throw new Error(`gaps of ${total_s} s have no half`);
}

/** The table at a spacing: straight lines between its rows, the last one beyond. */
function lowBy(every_s: number): { least_frac: number; most_frac: number } {
  const above = TABLE.findIndex((row) => row.every_s >= every_s);
  if (above < 0) return TABLE[TABLE.length - 1];
  if (above === 0) return TABLE[0];
  const [a, b] = [TABLE[above - 1], TABLE[above]];
  const part = (every_s - a.every_s) / (b.every_s - a.every_s);
  return {
    least_frac: a.least_frac + part * (b.least_frac - a.least_frac),
    most_frac: a.most_frac + part * (b.most_frac - a.most_frac),
  };
}
