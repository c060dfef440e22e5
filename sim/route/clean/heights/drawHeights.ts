import type { Chance } from "../../../math/kalman/backwardSampler.ts";
import { oneRegime } from "../../../math/kalman/oneRegime.ts";
import { sampleSwitching } from "../../../math/kalman/sampleSwitching.ts";
import type { Steps } from "../../log/steps.ts";
import type { Timeline } from "../rows/timeline.ts";
import { type HeightNoise, heightModel } from "./heightModel.ts";

/** Heights of the road that fit the log, one row a second: `elevation_m[draw * seconds + second]`. */
export function* drawHeights(
  line: Timeline,
  at_m: Float64Array,
  logged_m: Float64Array,
  noise: HeightNoise,
  draws: number,
  chance: Chance,
): Steps<Float32Array> {
  const result = new Float32Array(draws * line.seconds);
  const model = oneRegime(heightModel(line.time_s, at_m, logged_m, noise, 0, line.count));
  yield* sampleSwitching(model, draws, chance, (k, states) => {
    const second = line.second[k];
    for (let draw = 0; second >= 0 && draw < draws; draw++) {
      result[draw * line.seconds + second] = states[draw * model.states];
    }
  });
  return result;
}
