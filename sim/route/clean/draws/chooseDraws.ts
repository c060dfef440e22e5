import type { Piece, RoadLoadTerms } from "../report/spread.ts";
import type { Drives } from "./drawDrives.ts";
import { wheelEnergy_J } from "./wheelEnergy.ts";

/** One drive out of the draws. */
interface ChosenDrive {
  readonly speed_mps: Float64Array;
  /** Undefined where the log has no heights. */
  readonly elevation_m: Float64Array | undefined;
  readonly pieces: readonly Piece[];
}

/** Heights to choose from: the smoothed mean, and the draws beside it. */
export interface Heights {
  readonly mean_m: Float64Array;
  readonly drawn_m: Float32Array;
}

/** Where all draws stand for so long, one may follow another: nothing is carried over. */
const REST_s = 30;

/**
 * One drive of all that were drawn, piece by piece between two standstills: it stops as often up to the end of each as the median of the draws, and of those that
 * do it is the one whose energy at the wheel is nearest to the median, more or less by what the pieces before are off theirs. So the whole
 * has the energy and the stops of the middle of all draws. Heights come with their speeds, shifted so that they meet the smoothed ones at a piece's ends.
 */
export function chooseDraws(drives: Drives, heights: Heights | undefined, load: RoadLoadTerms): ChosenDrive {
  const { draws, seconds } = drives;
  const speed_mps = new Float64Array(seconds);
  const elevation_m = heights && new Float64Array(seconds);
  const pieces: Piece[] = [];
  const drawn_m = new Float64Array(seconds);
  const goesSoFar = new Float64Array(draws);
  let [owed_J, takenGoes] = [0, 0];
  for (const [from, to] of piecesOf(drives)) {
    const energy_J = new Float64Array(draws);
    const distance_m = new Float64Array(draws);
    const climb_m = new Float64Array(draws);
    const goes = new Float64Array(draws);
    for (let draw = 0; draw < draws; draw++) {
      const at = draw * seconds;
      if (heights) heightsOf(heights, drives, draw, from, to, drawn_m);
      for (let i = from + 1; i <= to; i++) {
        const [before_mps, after_mps] = [drives.speed_mps[at + i - 1], drives.speed_mps[at + i]];
        const rise_m = heights ? drawn_m[i] - drawn_m[i - 1] : 0;
        energy_J[draw] += wheelEnergy_J(load, before_mps, after_mps, rise_m);
        distance_m[draw] += 0.5 * (before_mps + after_mps);
        climb_m[draw] += Math.max(0, rise_m);
        goes[draw] += after_mps > 0 && (before_mps === 0 || i === from + 1) ? 1 : 0;
      }
    }
    for (let draw = 0; draw < draws; draw++) goesSoFar[draw] += goes[draw];
    const middle_J = energy_J[middleOf(energy_J)];
    const chosen = nearest(goes, goesSoFar[middleOf(goesSoFar)] - takenGoes, energy_J, middle_J + owed_J);
    owed_J += middle_J - energy_J[chosen];
    takenGoes += goes[chosen];
    for (let i = from; i <= to; i++) speed_mps[i] = drives.speed_mps[chosen * seconds + i];
    if (heights && elevation_m) {
      heightsOf(heights, drives, chosen, from, to, drawn_m);
      for (let i = from; i <= to; i++) elevation_m[i] = drawn_m[i];
    }
    pieces.push({ from, to, chosen, energy_J, distance_m, climb_m, goes });
  }
  return { speed_mps, elevation_m, pieces };
}

/** First and last second of each piece; one ends where the next begins. */
function* piecesOf({ draws, seconds, speed_mps }: Drives): Generator<readonly [number, number]> {
  let from = 0;
  let rested = 0;
  for (let i = 0; i < seconds; i++) {
    let standing = 0;
    while (standing < draws && speed_mps[standing * seconds + i] === 0) standing++;
    rested = standing === draws ? rested + 1 : 0;
    // Halfway through a rest, as far as it is known by now: the rest of it begins the next piece.
    if (rested === REST_s && i - from > REST_s) {
      yield [from, i - REST_s / 2];
      from = i - REST_s / 2;
    }
  }
  yield [from, seconds - 1];
}

/** Heights of a draw over a piece, less what it is off the mean at both ends, straight by distance in between. */
function heightsOf(heights: Heights, drives: Drives, draw: number, from: number, to: number, into: Float64Array): void {
  const at = draw * drives.seconds;
  const { mean_m, drawn_m } = heights;
  let whole_m = 0;
  for (let i = from; i < to; i++) whole_m += drives.speed_mps[at + i];
  const [offFrom_m, offTo_m] = [drawn_m[at + from] - mean_m[from], drawn_m[at + to] - mean_m[to]];
  let driven_m = 0;
  for (let i = from; i <= to; i++) {
    const share = whole_m > 0 ? driven_m / whole_m : (i - from) / Math.max(1, to - from);
    into[i] = drawn_m[at + i] - offFrom_m - (offTo_m - offFrom_m) * share;
    driven_m += drives.speed_mps[at + i];
  }
}

/** Where the middle one of the values in order stands. */
function middleOf(values: Float64Array): number {
  const order = Array.from(values, (_, i) => i).sort((a, b) => values[a] - values[b]);
  return order[Math.floor(order.length / 2)];
}

/** The draw whose goes are nearest to those wanted and, of several, whose energy is. */
function nearest(goes: Float64Array, wanted: number, energy_J: Float64Array, wanted_J: number): number {
  let best = 0;
  for (let draw = 1; draw < goes.length; draw++) {
    const nearer = Math.abs(goes[best] - wanted) - Math.abs(goes[draw] - wanted);
    const nearer_J = Math.abs(energy_J[best] - wanted_J) - Math.abs(energy_J[draw] - wanted_J);
    if (nearer > 0 || (nearer === 0 && nearer_J > 0)) best = draw;
  }
  return best;
}
