import { describe, expect, it } from "vitest";
import { fuseFor } from "../../../../sim/plan/currents/fuse.ts";

const drawn = (...amps: readonly [peak: number, two: number, ten: number, minute: number, steady: number]) =>
  fuseFor([0, 2, 10, 60, 600].map((duration_s, i) => ({ duration_s, battery_A: amps[i], motor_Nm: 0 })));

describe("the rating of a fuse", () => {
  // [IEC60269-1, 5.3], from memory.
  const sizes_A = [32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250];
  it.each(sizes_A.map((size_A, i) => [size_A, sizes_A[i + 1]]))(
    "of %d A carries a minute of that, and no more",
    (size_A, next_A) => {
      expect(drawn(0, 0, 0, size_A, 0)).toMatchObject({ rating_A: size_A, because: "minute", isBeyondList: false });
      const beyond = drawn(0, 0, 0, size_A + 0.1, 0);
      expect(beyond.rating_A).toBe(next_A ?? size_A + 0.1);
      expect(beyond.isBeyondList).toBe(next_A === undefined);
    },
  );
  it("carries hours to three quarters and ten seconds to twice of it", () => {
    expect(drawn(0, 0, 0, 0, 75)).toMatchObject({ rating_A: 100, because: "steady" });
    expect(drawn(0, 0, 0, 0, 75.1)).toMatchObject({ rating_A: 125, because: "steady" });
    expect(drawn(0, 0, 200, 0, 0)).toMatchObject({ rating_A: 100, because: "tenSeconds" });
    expect(drawn(0, 0, 200.1, 0, 0)).toMatchObject({ rating_A: 125, because: "tenSeconds" });
  });
  it("is said with how far shorter peaks lie above it", () => {
    const { tenSeconds_ratio, twoSeconds_ratio, peak_ratio } = drawn(400, 250, 150, 90, 75);
    expect([tenSeconds_ratio, twoSeconds_ratio, peak_ratio]).toEqual([1.5, 2.5, 4]);
  });
  it("is the least where nothing is drawn", () => {
    expect(fuseFor([])).toMatchObject({ rating_A: 32, tenSeconds_ratio: 0, twoSeconds_ratio: 0, peak_ratio: 0 });
  });
});
