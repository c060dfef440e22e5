import { expect, it } from "vitest";
import { chanceOf } from "../../../../../sim/route/clean/draws/chance.ts";
import { drawDrives } from "../../../../../sim/route/clean/draws/drawDrives.ts";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { runSteps } from "../../../../../sim/route/log/steps.ts";
import { everySecond } from "../rowsByHand.ts";

const SECONDS = 60;
const line = timeline(
  everySecond(SECONDS, () => ({})),
  0,
  SECONDS,
);
const noise = { correlated_m: 1, correlation_s: 20, white_m: 0.3, speed_mps: 0.1 };
const usual_mps2 = new Float64Array(SECONDS).fill(0.8);

function drawn(speed_mps: (i: number) => number, canStand = true) {
  const road = {
    time_s: line.time_s,
    at_m: new Float64Array(SECONDS).fill(Number.NaN),
    speed_mps: line.time_s.map((_, i) => speed_mps(i)),
    offset_m2: new Float64Array(SECONDS),
    isParked: new Uint8Array(SECONDS),
  };
  const setting = { draws: 8, chance: chanceOf(1), canStand, hasSpeeds: true, spreadLog: 0.1 };
  return runSteps(drawDrives(line, road, usual_mps2, noise, setting));
}
const at = ({ seconds, speed_mps }: ReturnType<typeof drawn>, second: number) =>
  Array.from({ length: 8 }, (_, draw) => speed_mps[draw * seconds + second]);

it("follow what was recorded, all of them, and are the same for the same seed", () => {
  const drives = drawn(() => 12);
  expect(drives).toMatchObject({ draws: 8, seconds: SECONDS });
  // Four standard deviations of one recorded speed.
  for (const speed_mps of at(drives, 30)) expect(Math.abs(speed_mps - 12)).toBeLessThan(0.4);
  expect(drawn(() => 12).speed_mps).toEqual(drives.speed_mps);
});

it("lie apart where nothing was recorded", () => {
  const values = at(
    drawn((i) => (i > 20 && i < 40 ? Number.NaN : 12)),
    30,
  );
  expect(Math.max(...values) - Math.min(...values)).toBeGreaterThan(0.5);
});

it("stand still at exactly nought, unless standing is turned off", () => {
  const rest = (i: number) => (i < 20 ? 12 * (1 - i / 20) : 0);
  expect(at(drawn(rest), 45)).toEqual(new Array(8).fill(0));
  expect(Math.min(...drawn(rest, false).speed_mps)).toBeGreaterThanOrEqual(0);
});
