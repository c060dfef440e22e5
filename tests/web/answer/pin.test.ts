import { expect, it } from "vitest";
import { inventedYear } from "../../../shared/job/inventedYear.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { answerFor } from "../../../sim/index.ts";
import { backToPinned, pinnedWords, unpinned, withPin } from "../../../web/answer/pin.ts";
import { demoJob } from "../../support/demoJob.ts";
import { inventedCandidate } from "../../support/inventedCandidate.ts";

const job = demoJob();
const candidates = job.packs.map(({ name }, i) => inventedCandidate(8 + 4 * i, { name }));
const answer = answerFor(
  job,
  candidates,
  candidates.map(() => []),
);
const at = "2026-11-29T14:20:00.000Z";
const pinned = withPin({ job, drafts: {} }, answer, at);

it("keeps the state and its answer in the job, which can be read from its file again", () => {
  const read = readJob(JSON.parse(JSON.stringify(pinned.job)));
  expect(read.pinned).toEqual(pinned.job.pinned);
  expect(read.pinned).toMatchObject({ at, state: { usualDay_km: 38 }, answer: { road: "Published urban cycle" } });
  expect(read.pinned?.answer.packs[0]?.left_km?.new.value).toBe(80 - 38);
});

it("says what was different in it", () => {
  const words = (changes: Partial<typeof job>) => pinnedWords({ ...pinned.job, ...changes }, "metric");
  expect(words({})).toBe("as it is now");
  expect(words({ usualDay_km: 50 })).toBe("usual day 38 km");
  expect(words({ drivenRoad: "coast", vehicle: { ...job.vehicle, load_kg: 200 } })).toBe(
    "road: Published urban cycle, load 110 kg",
  );
  expect(words({ longestDay_km: undefined, packs: job.packs.slice(1) })).toBe("longest day 74 km, other packs");
  expect(words({ year: { ...inventedYear, daysDriven_km: [12, 30] } })).toBe("other days in the year");
  expect(words({ environment: { ...job.environment, temperature_degC: -9 } })).toBe("other values");
  expect(pinnedWords({ ...pinned.job, usualDay_km: 50 }, "british")).toBe("usual day 23.6 miles");
});

it("goes back to all that was pinned, keeps it pinned, and leaves words, notes, roads and what waits in other fields as they are", () => {
  const { longestDay_km: _, ...rest } = pinned.job;
  const notes = [{ after: "packs", text: "measure the boot" }];
  const year = { ...inventedYear, daysAWeek: 7, daysDriven_km: [12, 50] };
  const changed = { ...rest, usualDay_km: 50, longestDaysAYear: 3, year, title: "Another title", notes };
  const unread = { typed: "?", problem: "found no number" };
  const waiting = { "staged.road.typed-road": { typed: "3 km at 50" }, client: unread };
  const { job: back, drafts } = backToPinned({ job: changed, drafts: { ...waiting, usualDay_km: unread } });
  expect(back).toEqual({ ...pinned.job, title: "Another title", notes });
  expect(drafts).toEqual(waiting);
});

it("drives the job's first road where the pinned one is gone", () => {
  const onCoast = withPin({ job: { ...job, drivenRoad: "coast" }, drafts: {} }, answer, at);
  const without = { ...onCoast.job, roads: job.roads.slice(0, 1), drivenRoad: "udds" };
  expect(backToPinned({ job: without, drafts: {} }).job.drivenRoad).toBeUndefined();
  expect(backToPinned({ job: onCoast.job, drafts: {} }).job.drivenRoad).toBe("coast");
});

it("goes away without a trace", () => {
  expect(unpinned(pinned)).toEqual({ job, drafts: {} });
});
