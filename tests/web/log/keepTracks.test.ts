import { signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { keepTracks } from "../../../web/log/keepTracks.ts";
import { createLogStaging } from "../../../web/log/logStaging.ts";
import type { Track } from "../../../web/store/database/jobRecord.ts";
import type { CurrentJob } from "../../../web/store/openJob.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";
import { promised } from "../../support/promised.ts";

/** The demo with two roads from logs before its own. */
function recorded(): Job {
  const job = demoJob();
  const road = (id: string) => ({ id, kind: "trace", title: id, time_s: [0, 1], speed_kmh: [0, 0] });
  const roads = [road("log-1"), road("log-2"), ...job.roads] as unknown as Job["roads"];
  return { ...job, roads, origins: { "roads.0": { from: "measured" }, "roads.1": { from: "measured" } } };
}

const stored: Track = { latitude_deg: Float64Array.of(50, 51), longitude_deg: Float64Array.of(7, 8), tripRows: [0, 1] };

/** A page that looks at a road, over a store that has these positions. */
function page(roadId: string, tracks: Readonly<Record<string, () => Promise<Track | undefined>>>) {
  const log = createLogStaging(noRoads, { value: {} });
  const view = { staging: { log }, roadId: signal(roadId) };
  const current = signal({ id: "j1" } as CurrentJob);
  const putTrack = vi.fn(async () => {});
  const readTrack = (id: string) => tracks[id]?.() ?? Promise.resolve(undefined);
  keepTracks(view, createJobEditor({ job: recorded(), drafts: {} }), { current, putTrack, readTrack });
  return { log, view, current, putTrack };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

it("brings the positions of the road in view, and says where there are none", async () => {
  const { log, view } = page("log-1", { "log-1": async () => stored });
  await settled();
  expect(log.kept.value).toEqual({ roadId: "log-1", track: stored });
  view.roadId.value = "log-2";
  await settled();
  expect(log.kept.value).toEqual({ roadId: "log-2" });
});

it("takes a track without a sample or a store that fails for none, and asks nothing of a road that is from no log", async () => {
  const none = Float64Array.of();
  const { log, view } = page("log-1", {
    "log-1": async () => ({ latitude_deg: none, longitude_deg: none, tripRows: [] }),
    "log-2": () => Promise.reject(new Error("the store is closed")),
  });
  await settled();
  expect(log.kept.value).toEqual({ roadId: "log-1" });
  view.roadId.value = "log-2";
  await settled();
  expect(log.kept.value).toEqual({ roadId: "log-2" });
  view.roadId.value = demoJob().roads[0].id;
  expect(log.kept.value).toBeUndefined();
});

it("drops positions that come when another road or another job is looked at", async () => {
  const late = promised<Track>();
  const { log, view } = page("log-1", { "log-1": () => late.promise });
  view.roadId.value = "log-2";
  late.resolve(stored);
  await settled();
  expect(log.kept.value).toEqual({ roadId: "log-2" });
  const other = promised<Track>();
  const second = page("log-1", { "log-1": () => other.promise });
  second.view.roadId.value = demoJob().roads[0].id;
  second.current.value = { id: "j2" } as CurrentJob;
  other.resolve(stored);
  await settled();
  expect(second.log.kept.value).toBeUndefined();
});

it("keeps the positions of a road just made, and that it has none", async () => {
  const { log, putTrack } = page("log-1", {});
  await settled();
  const { latitude_deg, longitude_deg } = stored;
  await log.keep.track("log-1", { latitude_deg, longitude_deg, tripRows: [0, 1] });
  expect(putTrack).toHaveBeenLastCalledWith("log-1", stored);
  expect(log.kept.value).toEqual({ roadId: "log-1", track: stored });
  await log.keep.track("log-2", undefined);
  expect(log.kept.value).toEqual({ roadId: "log-2" });
});
