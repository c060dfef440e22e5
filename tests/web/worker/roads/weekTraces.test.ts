import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { weekTraces } from "../../../../web/worker/roads/weekTraces.ts";
import { steadyTrace } from "../../../support/bareCar.ts";
import { weekJob } from "../../../support/weekJob.ts";

it("makes traces of the roads that the week's trips name, and of no other", async () => {
  const week = weekJob([
    { from: "monday", to: "monday", trips: [{ leaves: "8:00", arrives: "9:00", road: "steady" }] },
  ]);
  const roads: Job["roads"] = [...week.roads, { ...week.roads[0], id: "other" } as Job["roads"][number]];
  const asked: string[] = [];
  const trace = steadyTrace(20, 1000, 1);
  const traces = await weekTraces({ ...week, roads }, async ({ id }) => {
    asked.push(id);
    return trace;
  });
  expect(asked).toEqual(["steady"]);
  expect([...traces]).toEqual([["steady", trace]]);
});
