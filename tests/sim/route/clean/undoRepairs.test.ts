import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { type RepairKind, repairKinds } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { amongHouses, makeLog, makeTruth, withParking } from "../../../logs/logMaker.ts";
import { madeLog } from "../../../logs/madeFixes.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";

const truth = makeTruth(
  withParking(cycleSpeeds_mps("udds"), 300),
  4,
  (distance_m) => 100 + 20 * Math.sin(distance_m / 500),
);
const spoiling = { ...amongHouses, seed: 4 };
const positions = makeLog(truth, { ...spoiling, speed_mps: undefined });
const withSpeeds = makeLog(truth, spoiling).map((row) => ({
  ...row,
  speed_mps: row.speed_mps * 1.08,
}));
/** Cuts where a bridge is not wanted are still said, as lost signal; time must rise whatever is wished. */
const alwaysSaid: readonly RepairKind[] = ["signalLoss", "tunnel", "parked", "backwardTime", "duplicate"];

describe.each([
  ["positions alone", positions],
  ["recorded speeds that read 8 % high", withSpeeds],
] as const)("a noisy log of %s", (_, rows) => {
  const input = madeLog(rows);
  const whole = cleanLog(input);

  it.each(repairKinds)("without the repair %s is still a drive, and does not claim it", (kind) => {
    const log = cleanLog(input, { off: [kind] });
    const claimed = log.repairs.some((repair) => repair.kind === kind);
    expect(claimed && !alwaysSaid.includes(kind)).toBe(false);
    expect(log.series.speed_mps.every((speed_mps) => speed_mps >= 0 && speed_mps < 100)).toBe(true);
    expect(log.series.distance_m.every(Number.isFinite)).toBe(true);
  });

  it("shows what smoothing the heights took away", () => {
    const climb = (log: typeof whole) => {
      const { elevation_m } = log.series;
      return elevation_m.reduce((sum, height, i) => sum + (i > 0 ? Math.max(0, height - elevation_m[i - 1]) : 0), 0);
    };
    expect(climb(cleanLog(input, { off: ["heightNoise", "gradient"] }))).toBeGreaterThan(1.5 * climb(whole));
  });
});

it("a log of positions alone never stands where its stands are not held still", () => {
  const input = madeLog(positions);
  const stands_s = (off: readonly RepairKind[]) =>
    cleanLog(input, { off }).series.speed_mps.reduce((sum, speed_mps) => sum + (speed_mps === 0 ? 1 : 0), 0);
  expect(stands_s(["standingDrift"])).toBeLessThan(0.4 * stands_s([]));
});

it("a dashboard's 8 % do not make the road longer even where the scale is not corrected: the positions hold it", () => {
  const input = madeLog(withSpeeds);
  const far = (off: readonly RepairKind[]) => {
    const { distance_m, count } = cleanLog(input, { off }).series;
    return distance_m[count - 1];
  };
  // The speeds that read high are taken as noisy ones, since the way between the positions contradicts them.
  expect(Math.abs(far(["speedScale"]) / far([]) - 1)).toBeLessThan(0.02);
});
