import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shortestRoad_m } from "../../../../../sim/route/clean/gaps/shortestRoad.ts";
import { cycleSpeeds_mps } from "../../../../support/cycleSpeeds.ts";

const USUAL_mps2 = 1.5;

describe("the shortest road between two speeds", () => {
  it("is what braking to a stand and moving away takes, however long the car stands", () => {
    const stop_m = (15 ** 2 + 12 ** 2) / (2 * USUAL_mps2);
    expect(shortestRoad_m(15, 12, 18)).toBeCloseTo(stop_m, 9); // just time to stop
    expect(shortestRoad_m(15, 12, 600)).toBeCloseTo(stop_m, 9);
  });

  it("is the way at those speeds where there is no time to brake", () => {
    expect(shortestRoad_m(20, 20, 0.001) / 0.02).toBeCloseTo(1, 3);
    expect(shortestRoad_m(20, 5, 2)).toBeCloseTo(25, 9); // harder than usual even so
  });

  it("is no longer than any drive that slows down and speeds up as hard as is usual at most", () => {
    const speed = fc.double({ min: 0, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        speed,
        speed,
        fc.integer({ min: 2, max: 200 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (from, to, gap_s, share) => {
          fc.pre(Math.abs(from - to) < USUAL_mps2 * gap_s);
          // Any lowest speed it may come down to, held for the rest of the time.
          const deepest = Math.max(0, 0.5 * (from + to - USUAL_mps2 * gap_s));
          const lowest = deepest + share * (Math.min(from, to) - deepest);
          const ramps_s = (from + to - 2 * lowest) / USUAL_mps2;
          const road_m = (from ** 2 + to ** 2 - 2 * lowest ** 2) / (2 * USUAL_mps2) + lowest * (gap_s - ramps_s);
          expect(road_m).toBeGreaterThanOrEqual(shortestRoad_m(from, to, gap_s) - 1e-9);
        },
      ),
    );
  });

  it("takes for usual what the published cycles of towns and of all roads do at most", () => {
    for (const id of ["udds", "wltc-class-3b"]) {
      const changes = cycleSpeeds_mps(id).map((each_mps, i, all) => each_mps - (all[i - 1] ?? each_mps));
      expect(Math.abs(Math.max(...changes) / USUAL_mps2 - 1)).toBeLessThan(0.12);
      expect(Math.abs(Math.min(...changes) / -USUAL_mps2 - 1)).toBeLessThan(0.12);
    }
  });
});
