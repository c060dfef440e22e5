import { expect, it } from "vitest";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { daysFailed } from "../../../../sim/plan/layouts/daysFailed.ts";
import { yearOf, yearRanges } from "../../../../sim/plan/year/driveYear.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

it("counts the days that each pack fails as the year of that pack alone has them, new and at ten years", () => {
  const job = demoJob(0);
  const packs = job.packs.slice(0, 2);
  const trace = roadTrace(drivenRoad(job), cycleTexts);
  const counted = daysFailed({ ...job, packs }, trace);
  expect(counted).toHaveLength(2);
  packs.forEach((pack, i) => {
    const alone = { ...job, packs: [pack] };
    const { packs: years, days } = yearOf(alone, yearRanges(alone, trace));
    const failing = (age_years: number) => years.find((year) => year.age_years === age_years)?.failingDays.length;
    const driven = days.filter(({ kind }) => kind !== "off").length;
    expect(counted[i]).toEqual({ new: failing(0), tenYears: failing(10), driven });
  });
  expect(counted[0].tenYears).toBeGreaterThan(counted[1].tenYears);
});

it("is nothing for no packs", () => {
  const job = demoJob(0);
  expect(daysFailed({ ...job, packs: [] }, roadTrace(drivenRoad(job), cycleTexts))).toEqual([]);
});
