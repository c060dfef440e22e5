import { expect, it } from "vitest";
import { findGaps } from "../../../../sim/route/clean/gaps/findGaps.ts";
import { usualSpeedNoise } from "../../../../sim/route/clean/motion/fitSpeedNoise.ts";
import { RepairList } from "../../../../sim/route/clean/report/repairList.ts";
import type { RowColumns } from "../../../../sim/route/clean/rows/rowColumns.ts";
import { segmentSetting } from "../../../../sim/route/clean/segmentSetting.ts";
import { everySecond, rowsOf } from "./rowsByHand.ts";

function settingOf(rows: RowColumns) {
  const repairs = new RepairList();
  const found = findGaps(rows, repairs, 0);
  const setting = segmentSetting(rows, found, { incrementNoise_m: 0, offsets: new Map(), spans: [] }, repairs, 0, 1);
  return { ...setting, kinds: repairs.finish().map(({ kind }) => kind) };
}

it("has speeds where more than half of the fixes have one, and says that they are smoothed", () => {
  const whole = settingOf(everySecond(60, (i) => ({ north_m: 10 * i, speed_mps: 10 })));
  expect(whole).toMatchObject({ hasSpeeds: true, speedCover_frac: 1, drivingLog: 0.12, kinds: ["speedNoise"] });
  const half = settingOf(everySecond(60, (i) => ({ north_m: 10 * i, ...(i % 3 === 0 && { speed_mps: 10 }) })));
  expect(half).toMatchObject({ hasSpeeds: false, speedCover_frac: 1 / 3, drivingLog: 0.2 });
});

it("takes the usual noise where no speed is recorded", () => {
  const bare = settingOf(everySecond(60, (i) => ({ north_m: 10 * i })));
  expect(bare).toMatchObject({
    speedNoise: usualSpeedNoise,
    speedScale: { ratio: 1, isKnown: true },
    speedCover_frac: 0,
    kinds: [],
  });
});

it("knows the driver of a thin log least, and draws fewer drives of a very long one", () => {
  const thin = rowsOf(...Array.from({ length: 60 }, (_, i) => ({ time_s: 20 * i, north_m: 200 * i })));
  expect(settingOf(thin)).toMatchObject({ drivingLog: 0.35, draws: 24 });
  // 3,000,000 s of two fixes an hour and a half apart would be cut; here they stand in one segment.
  const rows = rowsOf({ time_s: 0, north_m: 0 }, { time_s: 3e6, north_m: 9 });
  const found = { segments: [{ from: 0, to: 2, bridges: [] }], gaps: [], interval_s: 20 };
  const setting = segmentSetting(
    rows,
    found,
    { incrementNoise_m: 0, offsets: new Map(), spans: [] },
    new RepairList(),
    0,
    1,
  );
  expect(setting.draws).toBe(2);
});
