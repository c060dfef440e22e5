import { FASTEST_CAR_mps } from "../../log/fastestCar.ts";

/** How a driver changes speed without hurry, in m/s2: between the gentle 0.8 and the brisk 1.5 of the standard cycles. */
const EASY_mps2 = 1.1;
const HARDEST_mps2 = 5;
const GENTLEST_mps2 = 0.5;
/** Nobody creeps like this for long: it stands for a stop. */
const CREEP_mps = 2;

/** Speed across a gap: a ramp, a steady piece, a ramp. */
interface Crossing {
  readonly steady_mps: number;
  readonly up_s: number;
  readonly down_s: number;
  readonly distance_m: number;
}

/**
 * The plainest drive over a gap of `gap_s` that begins and ends at the speeds given and covers `distance_m`: an even
 * change to a steady speed, and an even change to the speed at the end. The steady speed is found by halving; where it
 * would be a creep, the car is taken to have stopped instead. Ramps get steeper only where the gap leaves no time for easy ones; where even
 * that does not fit, `distance_m` of the result says what it covers.
 */
export function crossGap(from_mps: number, to_mps: number, gap_s: number, distance_m: number): Crossing {
  const plain = plainCrossing(from_mps, to_mps, gap_s, distance_m);
  if (plain.steady_mps > CREEP_mps) {
    return plain;
  }
  const ramp_mps2 = (from_mps ** 2 + to_mps ** 2) / (2 * distance_m);
  const fits = ramp_mps2 >= GENTLEST_mps2 && ramp_mps2 <= HARDEST_mps2 && (from_mps + to_mps) / ramp_mps2 <= gap_s;
  return fits ? crossing(from_mps, to_mps, gap_s, 0, ramp_mps2) : plain;
}

function plainCrossing(from_mps: number, to_mps: number, gap_s: number, distance_m: number): Crossing {
  for (let ramp_mps2 = EASY_mps2; ; ramp_mps2 = Math.min(HARDEST_mps2, ramp_mps2 * 1.5)) {
    const least = crossing(from_mps, to_mps, gap_s, 0, ramp_mps2);
    const most = crossing(from_mps, to_mps, gap_s, FASTEST_CAR_mps, ramp_mps2);
    const fits = least.distance_m <= distance_m && most.distance_m >= distance_m;
    if (fits) {
      return halved(from_mps, to_mps, gap_s, distance_m, ramp_mps2);
    }
    if (ramp_mps2 >= HARDEST_mps2) {
      return least.distance_m > distance_m ? least : most;
    }
  }
}

/** Speed of a crossing at a time after the gap's start. */
export function crossingSpeed_mps(
  crossing: Crossing,
  from_mps: number,
  to_mps: number,
  gap_s: number,
  at_s: number,
): number {
  if (at_s < crossing.up_s) {
    return from_mps + ((crossing.steady_mps - from_mps) * at_s) / crossing.up_s;
  }
  const left_s = Math.max(0, gap_s - at_s); // a moment at the gap's end may lie a rounding beyond it
  if (left_s < crossing.down_s) {
    return to_mps + ((crossing.steady_mps - to_mps) * left_s) / crossing.down_s;
  }
  return crossing.steady_mps;
}

function crossing(from_mps: number, to_mps: number, gap_s: number, steady_mps: number, ramp_mps2: number): Crossing {
  let up_s = Math.abs(steady_mps - from_mps) / ramp_mps2;
  let down_s = Math.abs(steady_mps - to_mps) / ramp_mps2;
  let steady = steady_mps;
  if (up_s + down_s > gap_s) {
    // No time to get there: the speed where the two ramps meet, or a single even change where they do not.
    const direction = steady_mps >= Math.max(from_mps, to_mps) ? 1 : -1;
    const meet = 0.5 * (from_mps + to_mps + direction * ramp_mps2 * gap_s);
    const isBeyond = direction > 0 ? meet >= Math.max(from_mps, to_mps) : meet <= Math.min(from_mps, to_mps);
    const isBetween = (steady_mps - from_mps) * (steady_mps - to_mps) < 0;
    if (isBetween || !isBeyond) {
      up_s = gap_s;
      down_s = 0;
      steady = to_mps;
    } else {
      steady = Math.max(0, meet);
      up_s = Math.abs(steady - from_mps) / ramp_mps2;
      down_s = Math.max(0, gap_s - up_s);
    }
  }
  const hold_s = Math.max(0, gap_s - up_s - down_s);
  const distance_m = 0.5 * (from_mps + steady) * up_s + steady * hold_s + 0.5 * (steady + to_mps) * down_s;
  return { steady_mps: steady, up_s, down_s, distance_m };
}

function halved(from_mps: number, to_mps: number, gap_s: number, distance_m: number, ramp_mps2: number): Crossing {
  let low = 0;
  let high = FASTEST_CAR_mps;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (crossing(from_mps, to_mps, gap_s, middle, ramp_mps2).distance_m < distance_m) {
      low = middle;
    } else {
      high = middle;
    }
  }
  return crossing(from_mps, to_mps, gap_s, high, ramp_mps2);
}
