import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { checkJob } from "../../../web/editing/checkJob.ts";
import type { EditorState } from "../../../web/editing/jobEditor.ts";
import { freeRoadId, isFromLog, namedRoad, withoutRoad, withRoad } from "../../../web/log/takeRoad.ts";
import type { MadeRoad } from "../../../web/worker/roads/roadsApi.ts";
import { demoJob } from "../../support/demoJob.ts";

const made: MadeRoad = {
  road: { kind: "trace", title: "Client's own road", time_s: [0, 10, 20], speed_kmh: [0, 36, 0] },
  distance_m: 100,
  duration_s: 20,
};

it("puts a measured road at the end of a job, as one that a log brought, and takes it out again", () => {
  const job = demoJob();
  const state = { job, drafts: {} };
  const id = freeRoadId(job, "log");
  const longer = withRoad(state, namedRoad(made, id), { from: "measured", note: "good" });
  expect(checkJob(longer.job, job).ok).toBe(true);
  expect(longer.job.roads.at(-1)).toEqual({ ...made.road, id });
  expect(isFromLog(longer.job, id)).toBe(true);
  expect(job.roads.some((road) => isFromLog(job, road.id))).toBe(false);
  expect(withoutRoad(longer, id)).toEqual(state);
});

it("keeps the origins of other roads with them when one goes", () => {
  const state = { job: demoJob(), drafts: {} };
  const two = withRoad(withRoad(state, namedRoad(made, "log-1"), { from: "measured" }), namedRoad(made, "typed-1"), {
    from: "guessed",
  });
  const one = withoutRoad(two, "log-1");
  const index = one.job.roads.findIndex(({ id }) => id === "typed-1");
  expect(one.job.origins[`roads.${index}`]).toEqual({ from: "guessed" });
  expect(isFromLog(one.job, "typed-1")).toBe(false);
  expect(one.job.origins[`roads.${index + 1}`]).toBeUndefined();
});

it("never gives an id twice", () => {
  const state = { job: demoJob(), drafts: {} };
  const first = withRoad(state, namedRoad(made, freeRoadId(state.job, "log")), { from: "measured" });
  expect(freeRoadId(first.job, "log")).toBe("log-2");
  expect(freeRoadId(first.job, "typed")).toBe("typed-1");
});

describe("the road that the packs are judged on", () => {
  const road = { kind: "cycle", id: "new", title: "New", cycle: "nycc" } as const;
  const first: EditorState = { job: demoJob(), drafts: {} };

  it("is the first of a job that names none", () => {
    expect(drivenRoad(first.job).id).toBe(first.job.roads[0].id);
  });

  it("is one just made, and the first again once that is taken out", () => {
    const made = withRoad(first, road, { from: "guessed" });
    expect(drivenRoad(made.job).id).toBe("new");
    const { job } = withoutRoad(made, "new");
    expect(job.drivenRoad).toBeUndefined();
    expect(drivenRoad(job).id).toBe(first.job.roads[0].id);
  });

  it("is kept in the job, and refused where the job has no such road", () => {
    const document = { ...structuredClone(demos[0].document as Record<string, unknown>), drivenRoad: "nowhere" };
    expect(() => readJob(document)).toThrow(/found "nowhere", the id of one of the roads wanted/);
  });
});
