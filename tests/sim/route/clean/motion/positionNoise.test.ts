import { expect, it } from "vitest";
import { fitPositionNoise } from "../../../../../sim/route/clean/motion/positionNoise.ts";
import { drawsOf } from "../../../../support/draws.ts";
import { everySecond } from "../rowsByHand.ts";

const whole = (to: number) => [{ from: 0, to, bridges: [] }];
const usual = { correlated_m: 5, white_m: 0.5, correlation_s: 20, acceleration_mps2: 0.9 };

/** A drive to the north at 15 m/s with an error that keeps e^(−1/20) of itself each second, of such a size. */
function driven(correlated_m: number) {
  const { normal } = drawsOf(3);
  const keep = Math.exp(-1 / 20);
  const next = (error_m: number) => keep * error_m + correlated_m * Math.sqrt(1 - keep * keep) * normal();
  let [east_m, north_m] = [correlated_m * normal(), correlated_m * normal()];
  return everySecond(400, (i) => {
    [east_m, north_m] = [next(east_m), next(north_m)];
    return { east_m, north_m: 15 * i + north_m };
  });
}

it("tells a good receiver from a bad one", () => {
  const found = (correlated_m: number) => fitPositionNoise(driven(correlated_m), whole(400), 1).correlated_m;
  // Of those tried: 0.2, 0.7, 1.5, 3, 5, 8 and 12 m.
  expect(found(0.7)).toBeLessThan(3);
  expect(found(8)).toBeGreaterThan(3);
});

it("takes a telephone's where fixes are thin or few", () => {
  expect(fitPositionNoise(driven(0.7), whole(400), 5)).toEqual(usual);
  expect(fitPositionNoise(driven(0.7), whole(50), 1)).toEqual(usual);
});
