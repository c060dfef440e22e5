import { expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { speedScale } from "../../../../../sim/route/clean/rows/speedScale.ts";
import { everySecond } from "../rowsByHand.ts";

/** Ten minutes at 20 m/s, the recorded speed so many times that: 40 pieces of 80 m want 200 s at five seconds a piece. */
function scaled(reads_ratio: number, { seconds = 600, off = [] as readonly "speedScale"[] } = {}) {
  const repairs = new RepairList(off);
  const rows = everySecond(seconds, (i) => ({ north_m: 20 * i, speed_mps: 20 * reads_ratio }));
  return { ...speedScale(rows, 1, repairs), detail: repairs.finish()[0]?.detail };
}

it("brings speeds that read high back to the positions, and says so", () => {
  const { ratio, detail } = scaled(1.08);
  // Metres of a degree are good to some parts in ten thousand here.
  expect(ratio).toBeCloseTo(1 / 1.08, 3);
  expect(detail).toMatch(/^recorded speed reads [78]\.\d % high against the positions; corrected$/);
});

it("leaves speeds that agree, and those that are off by more than a scale", () => {
  expect(scaled(1.02)).toEqual({ ratio: 1, isKnown: true, detail: undefined });
  expect(scaled(1.4)).toMatchObject({ ratio: 1, isKnown: false });
});

it("leaves a log with too few fast pieces, and one that is not to be mended", () => {
  expect(scaled(1.08, { seconds: 150 })).toMatchObject({ ratio: 1, isKnown: false });
  expect(scaled(1.08, { off: ["speedScale"] })).toMatchObject({ ratio: 1, isKnown: false });
});
