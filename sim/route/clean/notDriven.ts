import { MPS_PER_KMH } from "../../../shared/units.ts";
import { writeClock } from "../log/writeTime.ts";
import type { CleanedSeries } from "./report/cleanedLog.ts";

/** Motion is judged by the minute. */
const BLOCK_s = 60;
/** People walk at 1.2 to 1.6 m/s and little else; a jam at this pace stops and goes. From memory, unconfirmed. */
const WALK_mps = { from: 0.8, to: 2.2 };
const WALK_BLOCKS = 3;
/** Nobody holds a speed of town driving to within 6 % for ten minutes; ferries and conveyances do. Assumed. */
const STEADY_mps = { from: 2.8, to: 13 };
const STEADY_BLOCKS = 10;
const STEADY_frac = 0.06;
const SAME_frac = 0.1;

type Kind = "walk" | "steady" | undefined;

/**
 * Segments of a cleaned log that a car hardly drove, a sentence each: at a walking pace for three minutes or more, or at one
 * and the same low speed for ten. They are said and left in, since only the driver knows.
 */
export function notDriven(series: CleanedSeries, utcOffset_s: number): readonly string[] {
  const found: string[] = [];
  const blocks = Math.floor(series.count / BLOCK_s);
  let from = 0;
  let kind: Kind;
  let mean_mps = 0;
  for (let block = 0; block <= blocks; block++) {
    const next = block < blocks ? judged(series, block * BLOCK_s) : undefined;
    const goesOn =
      next?.kind === kind && (kind === "walk" || Math.abs((next?.mean_mps ?? 0) / mean_mps - 1) < SAME_frac);
    if (goesOn) {
      continue;
    }
    const long = block - from;
    if (kind !== undefined && long >= (kind === "walk" ? WALK_BLOCKS : STEADY_BLOCKS)) {
      const at = writeClock(series.time_s[from * BLOCK_s], utcOffset_s);
      const time = `${long} min`; // a block is a minute
      found.push(
        kind === "walk"
          ? `about ${time} at a walking pace from ${at}: if the logger was carried on foot, that is no drive`
          : `about ${time} at a steady ${(mean_mps / MPS_PER_KMH).toFixed(0)} km/h from ${at}: if that was a ferry or a train, it is no drive`,
      );
    }
    from = block;
    kind = next?.kind;
    mean_mps = next?.mean_mps ?? 0;
  }
  return found;
}

function judged({ speed_mps }: CleanedSeries, first: number): { kind: Kind; mean_mps: number } {
  let sum = 0;
  let squares = 0;
  for (let i = first; i < first + BLOCK_s; i++) {
    sum += speed_mps[i];
    squares += speed_mps[i] ** 2;
  }
  const mean_mps = sum / BLOCK_s;
  const spread_mps = Math.sqrt(Math.max(0, squares / BLOCK_s - mean_mps ** 2));
  const isWithin = ({ from, to }: { from: number; to: number }) => mean_mps >= from && mean_mps <= to;
  if (isWithin(WALK_mps) && spread_mps < 0.3 * mean_mps) return { kind: "walk", mean_mps };
  if (isWithin(STEADY_mps) && spread_mps < STEADY_frac * mean_mps) return { kind: "steady", mean_mps };
  return { kind: undefined, mean_mps };
}
