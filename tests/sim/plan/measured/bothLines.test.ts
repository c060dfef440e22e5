import { describe, expect, it } from "vitest";
import { bothLines } from "../../../../sim/plan/measured/bothLines.ts";
import { driveWeeks } from "../../../../sim/plan/week/driveWeek.ts";
import { yearOf, yearRanges } from "../../../../sim/plan/year/driveYear.ts";
import { steadyTrace } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";
import { DRAG_N, steadyRoad, weekJob } from "../../../support/weekJob.ts";

// 137 N on the level are 38 Wh/km: four kilowatt-hours do a hundred kilometres; 900 W at 20 m/s take 12.5 Wh/km more.
const days = [
  {
    from: "monday",
    to: "friday",
    trips: [
      { leaves: "8:00", arrives: "9:00", road: "steady" },
      { leaves: "17:00", arrives: "18:00", road: "steady", way: "back", parkedAt: "Home" },
    ],
  },
];
const job = weekJob(days, flatPack(4));
const heavier = { ...job, accessories: { ...job.accessories, standing_W: job.accessories.standing_W + 900 } };
const traces = steadyRoad();
const road = steadyTrace(20, 1000, 1);
const last = job.packs.length - 1;

describe("one pack by the prediction and by the line that its log corrected", () => {
  const { predicted, corrected } = bothLines(job, heavier, last, road, traces);

  it("has the year and the week that their own studies give that pack", () => {
    const alone = { ...job, packs: [job.packs[last]] };
    const year = yearOf(alone, yearRanges(alone, road));
    expect(predicted.year).toEqual(
      year.packs.map(({ age_years, failingDays }) => ({ age_years, failingDays: failingDays.length })),
    );
    expect(predicted.drivenDays).toBe(year.days.filter(({ kind }) => kind !== "off").length);
    const weeks = driveWeeks(job, traces, [last])?.packs ?? [];
    expect(weeks.length).toBeGreaterThan(0);
    expect(predicted.week.map(({ condition }) => condition)).toEqual(weeks.map(({ condition }) => condition));
    for (const [i, { lowest }] of weeks.entries())
      expect(predicted.week[i]?.lowest_frac).toBeCloseTo(lowest.soc_frac, 12);
  });

  it("goes less far and comes home lower where more stays on", () => {
    // As far as the energy of either kilometre has it, but for pulling away.
    const perKm_Wh = [DRAG_N / 3.6, DRAG_N / 3.6 + 900 / 72 / job.accessories.dcdcEfficiency_frac];
    expect(corrected.range_km / predicted.range_km).toBeCloseTo((perKm_Wh[0] ?? 0) / (perKm_Wh[1] ?? 1), 1);
    for (const [i, { lowest_frac }] of corrected.week.entries())
      expect(lowest_frac).toBeLessThanOrEqual(predicted.week[i]?.lowest_frac ?? 0);
    expect(corrected.week[0]?.lowest_frac).toBeLessThan(predicted.week[0]?.lowest_frac ?? 0);
  });

  it("has no week where the job has none", () => {
    const { week: _week, ...without } = job;
    expect(bothLines(without, without, last, road, new Map()).predicted.week).toEqual([]);
  });
});
