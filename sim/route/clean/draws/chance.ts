import { randomNormal } from "d3-random";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { Chance } from "../../../math/kalman/backwardSampler.ts";

/** Chance that is the same for the same seed, on every machine. */
export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  return { uniform, normal: randomNormal.source(uniform)(0, 1) };
}
