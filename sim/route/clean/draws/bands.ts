import type { Band, Spread } from "../../../../shared/spread.ts";
import type { Piece, Stops, Unmodelled } from "../report/spread.ts";

/**
 * What the model itself leaves out of energy, distance and stops, as half the width of a band of 80 %, by the seconds from fix to fix,
 * calibrated over three makers of logs with tests/bench/logEnergyTable.ts so that seven to nine of ten bands hold the truth. Energy and distance come with what the road is
 * seen to wind from fix to fix (`circuity_frac`): as much again may lie unseen between fixes that are far apart, of smooth bends a third of it.
 */
export function unmodelledOf(interval_s: number, hasSpeeds: boolean, circuity_frac: number): Unmodelled {
  const energy = between(interval_s, hasSpeeds ? [0.018, 0.032, 0.06, 0.03] : [0.025, 0.04, 0.06, 0.08]);
  const distance = between(interval_s, hasSpeeds ? [0.002, 0.003, 0.003, 0.004] : [0.006, 0.008, 0.008, 0.008]);
  const unseen = between(interval_s, [0.33, 0.6, hasSpeeds ? 0.7 : 0.8, 0.9]);
  const stops_frac = between(interval_s, hasSpeeds ? [0, 0.12, 0.24, 0.3] : [0.08, 0.18, 0.19, 0.4]);
  return {
    energy_frac: Math.hypot(energy, circuity_frac),
    distance_frac: Math.hypot(distance, unseen * circuity_frac),
    stops_frac,
  };
}

/** Straight by the logarithm of the interval between values at 1, 5, 10 and 30 s; the first and last hold beyond. */
function between(interval_s: number, known: readonly number[]): number {
  const at_s = [1, 5, 10, 30];
  if (!(interval_s > at_s[0])) return known[0];
  let i = 0;
  while (i < at_s.length - 2 && interval_s > at_s[i + 1]) i++;
  const share = Math.min(1, Math.log(interval_s / at_s[i]) / Math.log(at_s[i + 1] / at_s[i]));
  return known[i] + (known[i + 1] - known[i]) * share;
}

/**
 * The spread of the pieces given, taken together: a draw's energy is the sum of that draw's pieces, so that what all have in common
 * stays in; what the model leaves out comes on top. Undefined where nothing was drawn, or nothing moves.
 */
export function spreadOver(pieces: readonly Piece[], unmodelled: Unmodelled): Spread | undefined {
  const [first] = pieces;
  if (!first) return undefined;
  const draws = pieces.reduce((least, piece) => Math.min(least, piece.energy_J.length), first.energy_J.length);
  const sums = {
    energy_J: new Float64Array(draws),
    distance_m: new Float64Array(draws),
    climb_m: new Float64Array(draws),
  };
  const taken = { energy_J: 0, distance_m: 0 };
  for (const piece of pieces) {
    for (let draw = 0; draw < draws; draw++) {
      sums.energy_J[draw] += piece.energy_J[draw];
      sums.distance_m[draw] += piece.distance_m[draw];
      sums.climb_m[draw] += piece.climb_m[draw];
    }
    taken.energy_J += piece.energy_J[piece.chosen];
    taken.distance_m += piece.distance_m[piece.chosen];
  }
  if (!(taken.energy_J > 0) || !(taken.distance_m > 0)) return undefined;
  return {
    energy_ratio: widened(bandOf(sums.energy_J.map((each) => each / taken.energy_J)), unmodelled.energy_frac),
    distance_ratio: widened(bandOf(sums.distance_m.map((each) => each / taken.distance_m)), unmodelled.distance_frac),
    climb_m: bandOf(sums.climb_m),
  };
}

/**
 * How often the drive stops on the way: as it was taken, and 10 to 90 % of the drives that fit the log, with what the model leaves out, a stop
 * at least where that is anything; between one go and the next is a stop.
 */
export function stopsOver(pieces: readonly Piece[], { stops_frac }: Unmodelled): Stops | undefined {
  const [first] = pieces;
  if (!first) return undefined;
  const draws = pieces.reduce((least, { goes }) => Math.min(least, goes.length), first.goes.length);
  const of = (goes: number) => Math.max(0, goes - 1);
  const sums = new Float64Array(draws);
  for (const { goes } of pieces) for (let draw = 0; draw < draws; draw++) sums[draw] += goes[draw];
  const taken = of(pieces.reduce((sum, { goes, chosen }) => sum + goes[chosen], 0));
  const { low, high } = bandOf(sums.map(of));
  const out = stops_frac > 0 ? Math.max(1, stops_frac * taken) : 0;
  return {
    taken,
    band: {
      low: Math.max(0, taken - Math.hypot(Math.max(0, taken - low), out)),
      high: taken + Math.hypot(Math.max(0, high - taken), out),
    },
  };
}

function widened({ low, high }: Band, by: number): Band {
  return { low: 1 - Math.hypot(Math.max(0, 1 - low), by), high: 1 + Math.hypot(Math.max(0, high - 1), by) };
}

/** 10 and 90 % of the values, straight between them in order. */
function bandOf(values: Float64Array): Band {
  const sorted = values.slice().sort();
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (sorted[above] - sorted[below]) * (place - below);
  };
  return { low: at(0.1), high: at(0.9) };
}
