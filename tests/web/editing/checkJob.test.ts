import { expect, it } from "vitest";
import { checkJob } from "../../../web/editing/checkJob.ts";
import { inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";

const before = withRecordedRoad(inventedJob(), 100);

it("keeps the very parts that did not change", () => {
  const checked = checkJob({ ...before, usualDay_km: 41 }, before);
  if (!checked.ok) throw new Error("a job");
  expect(checked.job.usualDay_km).toBe(41);
  expect(checked.job.vehicle).toBe(before.vehicle);
  expect(checked.job.roads[1]).toBe(before.roads[1]);
});

it("says what is wrong with the whole", () => {
  const checked = checkJob({ ...before, usualDay_km: -1 }, before);
  expect(checked).toMatchObject({ ok: false, problems: [{ where: "usualDay_km" }] });
});

it("reads a recorded road that is new, and one that was checked not again", () => {
  const [town, recorded] = before.roads;
  if (recorded.kind !== "trace") throw new Error("a recorded road");
  const wrong = { ...recorded, time_s: recorded.time_s.map(() => 0) };
  expect(checkJob({ ...before, roads: [town, wrong] }, before).ok).toBe(false);
  expect(checkJob({ ...before, roads: [town, wrong] }, before, [wrong]).ok).toBe(true);
});
