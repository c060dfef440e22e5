import type { Chance } from "../../../math/kalman/backwardSampler.ts";
import { sampleSwitching } from "../../../math/kalman/sampleSwitching.ts";
import type { Steps } from "../../log/steps.ts";
import type { Timeline } from "../rows/timeline.ts";
import {
  ACCELERATION,
  type AlongNoise,
  type AlongRoad,
  DRIVING_STATES,
  drivingModel,
  SPEED,
  STANDING,
} from "./drivingModel.ts";
import { seenMoving, settle } from "./settle.ts";

/** Drives that fit the log, one row a second: `speed_mps[draw * seconds + second]`, 0 exactly where the draw stands. */
export interface Drives {
  readonly draws: number;
  readonly seconds: number;
  readonly speed_mps: Float32Array;
}

/** How the drives are drawn. */
export interface DrawSetting {
  readonly draws: number;
  readonly chance: Chance;
  readonly canStand: boolean;
  /** Whether most of the log's fixes have a recorded speed. */
  readonly hasSpeeds: boolean;
  /** How well the log knows the driving's acceleration noise: standard deviation of the logarithm of the factor on its accelerations. */
  readonly spreadLog: number;
}

/** Draws from which the acceleration noise of each moment is taken. */
const FIRST_DRAWS = 6;
/** Acceleration noise is taken over this much time on each side, beside so much time of the usual. Fitted to the makers of logs. */
const REACH_s = 4;
const USUAL_s = 4;
/** A quarter of the draws each by a calmer and a livelier driver: three points of the same spread as the whole doubt. */
const QUARTER = Math.SQRT2;

/**
 * Drives drawn from all that fit the log. Driving is long calm pieces and short pushes, so that the spread of acceleration is found for each
 * moment from a first few draws: s^2 = s0^2 (U + sum a^2/s0^2 dt) / (U + sum dt) over `REACH_s` on each side. A quarter of the draws
 * is then drawn with a calmer and a quarter with a livelier spread, by what is not known of it.
 */
export function* drawDrives(
  line: Timeline,
  known: AlongRoad,
  usual_mps2: Float64Array,
  noise: AlongNoise,
  setting: DrawSetting,
): Steps<Drives> {
  const { draws, chance, canStand, spreadLog } = setting;
  const spread_mps2 = yield* localSpread(known, usual_mps2, noise, setting);
  const result = new Float32Array(draws * line.seconds);
  const quarter = Math.floor(draws / 4);
  const groups = [draws - 2 * quarter, quarter, quarter];
  let firstDraw = 0;
  for (let group = 0; group < groups.length; group++) {
    if (groups[group] === 0) continue;
    const factor = Math.exp([0, -1, 1][group] * QUARTER * spreadLog);
    const model = drivingModel(
      known,
      spread_mps2.map((each) => factor * each),
      noise,
      { canStand },
    );
    const from = firstDraw;
    const steps = sampleSwitching(model, groups[group], chance, (k, states, regimes) => {
      const second = line.second[k];
      if (second < 0) return;
      for (let draw = 0; draw < regimes.length; draw++) {
        const at = (from + draw) * line.seconds + second;
        result[at] = regimes[draw] === STANDING ? 0 : Math.max(0, states[draw * DRIVING_STATES + SPEED]);
      }
    });
    for (const done of steps) yield 0.25 + 0.25 * (group + done);
    firstDraw += groups[group];
  }
  const isSeen = canStand ? seenMoving(line, known.speed_mps, noise.speed_mps) : undefined;
  for (let draw = 0; isSeen && draw < draws; draw++) {
    settle(result.subarray(draw * line.seconds, (draw + 1) * line.seconds), isSeen, noise, setting.hasSpeeds);
  }
  return { draws, seconds: line.seconds, speed_mps: result };
}

/** Spread of acceleration at each moment, from a few draws with the usual one. */
function* localSpread(
  known: AlongRoad,
  usual_mps2: Float64Array,
  noise: AlongNoise,
  { chance, canStand }: DrawSetting,
): Steps<Float64Array> {
  const n = known.time_s.length;
  const squares_s = new Float64Array(n);
  const moving_s = new Float64Array(n);
  const model = drivingModel(known, usual_mps2, noise, { canStand });
  const steps = sampleSwitching(model, FIRST_DRAWS, chance, (k, states, regimes) => {
    const dt_s = k > 0 ? known.time_s[k] - known.time_s[k - 1] : 0;
    for (let draw = 0; draw < FIRST_DRAWS; draw++) {
      if (regimes[draw] === STANDING) continue;
      squares_s[k] += ((states[draw * DRIVING_STATES + ACCELERATION] / usual_mps2[k]) ** 2 * dt_s) / FIRST_DRAWS;
      moving_s[k] += dt_s / FIRST_DRAWS;
    }
  });
  for (const done of steps) yield 0.25 * done;
  const result = new Float64Array(n);
  let [from, to, squares, moving] = [0, 0, 0, 0];
  for (let k = 0; k < n; k++) {
    for (; to < n && known.time_s[to] <= known.time_s[k] + REACH_s; to++) {
      squares += squares_s[to];
      moving += moving_s[to];
    }
    for (; known.time_s[from] < known.time_s[k] - REACH_s; from++) {
      squares -= squares_s[from];
      moving -= moving_s[from];
    }
    result[k] = usual_mps2[k] * Math.sqrt((USUAL_s + Math.max(0, squares)) / (USUAL_s + Math.max(0, moving)));
  }
  return result;
}
