import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../../sim/route/clean/cleanLog.ts";
import { madeLog, steadyRows } from "../../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const SPEED_mps = 13.2;
const GAP_s = 40;

/** Two minutes at a steady speed, forty seconds without a fix after which the car is `line_m` further on, two minutes more. */
function withGap(line_m: number) {
  const before = steadyRows(START_s, 120, SPEED_mps);
  const from_m = before[119].north_m + line_m;
  return [...before, ...steadyRows(START_s + 119 + GAP_s, 120, SPEED_mps, from_m)].map((row) => ({
    ...row,
    speed_mps: SPEED_mps,
  }));
}

/** Metres driven across the gap. */
function across_m(line_m: number): { readonly driven_m: number; readonly words: string } {
  const log = cleanLog(madeLog(withGap(line_m)));
  const { distance_m } = log.series;
  const words = log.repairs.flatMap(({ events }) => events.map(({ detail }) => detail)).join("; ");
  return { driven_m: distance_m[119 + GAP_s] - distance_m[119], words };
}

describe("a gap whose ends were driven at 13.2 m/s for 40 s, 528 m", () => {
  it("is bridged by the speeds where the line is too short even for a stop, and that is said", () => {
    // Braking from 12.2 m/s and moving away again at 1.5 m/s2 takes 99 m: 60 m of line are no road.
    const { driven_m, words } = across_m(60);
    expect(words).toMatch(/make 528 m, even with a stop 99\.\d m, the straight line 6\d m: bridged by the speeds/);
    expect(driven_m / (GAP_s * SPEED_mps)).toBeGreaterThan(0.75); // known to a quarter
  });

  it("is bridged by the line where a stop on the way explains it", () => {
    const { driven_m, words } = across_m(200);
    expect(words).not.toContain("by the speeds");
    expect(driven_m).toBeGreaterThan(170);
    expect(driven_m).toBeLessThan(260);
  });

  it("is bridged by the line where line and speeds agree", () => {
    const { driven_m, words } = across_m(500);
    expect(words).not.toContain("by the speeds");
    expect(Math.abs(driven_m / 500 - 1)).toBeLessThan(0.1); // what a line is known to
  });
});
