import type { Timeline } from "../rows/timeline.ts";
import type { AlongNoise } from "./drivingModel.ts";
import { STANDING_BELOW_mps } from "./drivingPrior.ts";

/** Less than this between two standstills is no move: in the published cycles the shortest has 6 m and the next 35 m. */
const LEAST_MOVE_m = 3;
/** Nor is what recorded speeds ought to show and do not, up to the second shortest: reflections move a standing car's positions by 15 to 40 m. */
const LEAST_UNSEEN_m = 35;

/** The seconds in which a recorded speed shows the car moving, beyond two standard deviations of its noise, 1 each. */
export function seenMoving(
  line: Pick<Timeline, "count" | "seconds" | "second">,
  speed_mps: Float64Array,
  noise_mps: number,
): Uint8Array {
  const isSeen = new Uint8Array(line.seconds);
  let second = 0;
  for (let k = 0; k < line.count; k++) {
    if (line.second[k] >= 0) second = line.second[k];
    if (speed_mps[k] >= STANDING_BELOW_mps + 2 * noise_mps) isSeen[second] = 1;
  }
  return isSeen;
}

/**
 * Puts a drawn drive at rest where it stands by the rules' own measure, and where it only fidgets between two standstills, in place: a move of
 * less than 3 m or, where no recorded speed shows it, of less than the correlated noise of the positions makes in its time, two standard deviations of it:
 *
 *   2 s sqrt(2 (1 - exp(-t / T)))        (first-order process of standard deviation s and time constant T)
 *
 * and in a log that records speeds of less than 35 m.
 */
export function settle(
  speed_mps: Float32Array,
  isSeen: Uint8Array,
  { correlated_m, correlation_s }: Pick<AlongNoise, "correlated_m" | "correlation_s">,
  hasSpeeds: boolean,
): void {
  const leastUnseen_m = hasSpeeds ? LEAST_UNSEEN_m : LEAST_MOVE_m;
  let moved_m = 0;
  let hasSeen = false;
  let lastRest = -1;
  for (let i = 0; i < speed_mps.length; i++) {
    if (speed_mps[i] >= STANDING_BELOW_mps) {
      moved_m += speed_mps[i];
      hasSeen ||= isSeen[i] === 1;
      continue;
    }
    speed_mps[i] = 0;
    if (lastRest >= 0 && moved_m > 0) {
      const noise_m = 2 * correlated_m * Math.sqrt(2 * (1 - Math.exp(-(i - lastRest) / correlation_s)));
      if (moved_m < (hasSeen ? LEAST_MOVE_m : Math.max(leastUnseen_m, noise_m))) speed_mps.fill(0, lastRest + 1, i);
    }
    lastRest = i;
    moved_m = 0;
    hasSeen = false;
  }
}
