import { expect, it } from "vitest";
import { layOut } from "../../../../sim/route/clean/rows/plane.ts";
import { timeline } from "../../../../sim/route/clean/rows/timeline.ts";
import { segmentMoments } from "../../../../sim/route/clean/segmentMoments.ts";
import type { SegmentSetting } from "../../../../sim/route/clean/segmentSetting.ts";
import { rowsOf } from "./rowsByHand.ts";

it("lays rows out along the timeline, speeds scaled, with what may have moved the positions", () => {
  const rows = rowsOf(
    { time_s: 0, north_m: 0, speed_mps: 10 },
    { time_s: 2, north_m: 20 },
    { time_s: 3, speed_mps: 12 },
  );
  const setting = {
    speedScale: { ratio: 0.9, isKnown: true },
    offsets: new Map([[2, 25]]),
  } as unknown as SegmentSetting;
  const segment = { from: 0, to: 3, bridges: [{ from: 0, kind: "parked" as const }] };
  const line = timeline(rows, 0, 3);
  const moments = segmentMoments(rows, segment, line, layOut(rows.latitude_deg, rows.longitude_deg), setting);
  expect([...moments.time_s]).toEqual([0, 1, 2, 3]);
  expect([...moments.speed_mps].map((each) => Math.round(10 * each) / 10)).toEqual([9, Number.NaN, Number.NaN, 10.8]);
  expect(moments.north_m[2]).toBeCloseTo(20, 1);
  // A receiver that starts again after a parking may be 40 m off.
  expect([...moments.offset_m2]).toEqual([0, 0, 1600, 25]);
  expect(moments.positions).toBe(2);
});
