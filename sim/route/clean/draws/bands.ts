import type { Band, Spread } from "../../../../shared/spread.ts";
import type { Piece, Stops, Unmodelled } from "../report/spread.ts";

/**
 * What the model itself leaves out of energy, distance and stops, as half the width of a band of 80 %, by the seconds from fix to fix,
 * calibrated over three makers of logs with tests/bench/logEnergyTable.ts (seeds 1 to 6) so that eight of ten bands hold the truth. Energy and distance come with what the road is
 * seen to wind from fix to fix (`circuity_frac`): as much again may lie unseen between fixes that are far apart, of smooth bends a third of it; recorded
 * speeds know most of it. Of the energy of fixes half a minute apart the draws spread enough by themselves.
 */
export function unmodelledOf(interval_s: number, hasSpeeds: boolean, circuity_frac: number): Unmodelled {
  const [energy, distance, unseen, unseenEnergy, stops_frac] = (hasSpeeds ? leftOut.recorded : leftOut.positions).map(
    (each) => between(interval_s, each),
  );
  return {
    energy_frac: Math.hypot(energy, unseenEnergy * circuity_frac),
    distance_frac: Math.hypot(distance, unseen * circuity_frac),
    stops_frac,
  };
}

/** Of energy, of distance, shares of the circuity in distance and in energy, of stops; each at 1, 5, 10 and 30 s. */
const leftOut = {
  recorded: [
    [0.021, 0.03, 0.04, 0],
    [0.0025, 0.001, 0.001, 0.004],
    [0.2, 0.2, 0.3, 0.6],
    [1, 1, 1, 0.2],
    [0, 0.06, 0, 0.17],
  ],
  positions: [
    [0.016, 0.042, 0.05, 0],
    [0.005, 0.006, 0.003, 0.008],
    [0.33, 0.7, 1, 0.65],
    [1, 1, 1, 0.5],
    [0.1, 0.14, 0.14, 0.33],
  ],
} as const;

/**
 * The share of its stops that the draws of a log have, by the seconds from fix to fix: a stop between two fixes shows less the shorter it is than
 * their interval, and how many there are of such is known only from driving elsewhere. Those of UDDS, US06 and WLTC class 3b, 28 in all, driven along made roads
 * with positions off by 5 m, are found to 92 % every 10 s and to 78 % every 30 s, 4 % more or fewer with speeds recorded or not, which is
 * chance (`npx tsx tests/bench/stopsFound.ts`; not NYCC, whose jam is of another kind, nor HWFET, which never stops).
 */
export function stopsFound_frac(interval_s: number): number {
  return between(interval_s, [1, 1, 0.92, 0.78]);
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

/** Share of a band. */
const HELD_frac = 0.8;
/** Half the width of a normal distribution's band of 80 %, in standard deviations. */
const HALF = 1.2816;

/**
 * How often the drive stops on the way: in the drive taken, likely, and a band of 80 %; between one go and the next is a stop. Of thin logs
 * the draws find only a share f of the stops (`found_frac`): where each is found by chance and n are, there are n / f, with a standard deviation of sqrt(n (1 - f)) / f
 * (negative binomial distribution). What the draws say is the shortest range of whole counts that holds eight in ten of them, so that
 * a count on which they agree is a range of itself and holds more; what the model leaves out comes on top. The band is of the whole counts within.
 */
export function stopsOver(
  pieces: readonly Piece[],
  { stops_frac }: Pick<Unmodelled, "stops_frac">,
  found_frac = 1,
): Stops | undefined {
  const [first] = pieces;
  if (!first) return undefined;
  const draws = pieces.reduce((least, { goes }) => Math.min(least, goes.length), first.goes.length);
  const of = (goes: number) => Math.max(0, goes - 1);
  const sums = new Float64Array(draws);
  for (const { goes } of pieces) for (let draw = 0; draw < draws; draw++) sums[draw] += goes[draw];
  const counts = sums.map(of).sort();
  const found = counts[Math.floor(draws / 2)];
  const { low, high } = shortestRange(counts);
  const likely = found / found_frac;
  const hidden = (HALF * Math.sqrt(found * (1 - found_frac))) / found_frac;
  const off = (by: number) => Math.hypot(by / found_frac, hidden, stops_frac * likely);
  const whole = Math.round(likely);
  return {
    taken: of(pieces.reduce((sum, { goes, chosen }) => sum + goes[chosen], 0)),
    likely: whole,
    band: {
      low: Math.min(whole, Math.max(0, Math.ceil(likely - off(found - low)))),
      high: Math.max(whole, Math.floor(likely + off(high - found))),
    },
  };
}

/** The shortest range of counts in order that holds eight in ten of them; of several as short the middle one. */
function shortestRange(counts: Float64Array): Band {
  const held = Math.ceil(HELD_frac * counts.length);
  const ranges = Array.from({ length: counts.length - held + 1 }, (_, i) => ({
    low: counts[i],
    high: counts[i + held - 1],
  }));
  const least = Math.min(...ranges.map(({ low, high }) => high - low));
  const shortest = ranges.filter(({ low, high }) => high - low === least);
  return shortest[Math.floor(shortest.length / 2)];
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
