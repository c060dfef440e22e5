import { expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

const hills = { distance_km: [0, 0.5, 1], elevation_m: [5, 25, 5] };

it("of a cycle is that cycle under the road's own name", () => {
  const trace = roadTrace({ kind: "cycle", id: "town", title: "The town", cycle: "ece-15" }, cycleTexts);
  expect([trace.id, trace.title]).toEqual(["town", "The town"]);
  expect(trace.time_s[trace.time_s.length - 1]).toBe(195);
  expect(trace.profile).toBeUndefined();
});

it("of a recorded road counts its clock from 0, in m/s", () => {
  const trace = roadTrace(
    { kind: "trace", id: "a", title: "A", time_s: [100, 101, 103], speed_kmh: [0, 36, 0] },
    cycleTexts,
  );
  expect([...trace.time_s]).toEqual([0, 1, 3]);
  expect(trace.speed_mps[1]).toBeCloseTo(10, 12);
});

it("lays the hills under either kind", () => {
  const trace = roadTrace({ kind: "cycle", id: "town", title: "The town", cycle: "ece-15", hills }, cycleTexts);
  expect([...(trace.profile?.distance_m ?? [])]).toEqual([0, 500, 1000]);
  expect([...(trace.profile?.elevation_m ?? [])]).toEqual([5, 25, 5]);
});

it("refuses a cycle it does not know", () => {
  expect(() => roadTrace({ kind: "cycle", id: "t", title: "T", cycle: "ece-16" }, cycleTexts)).toThrow(InputError);
});

it("begins and ends at rest where the recording does not, hills moved along", () => {
  const road = { kind: "trace", id: "a", title: "A", time_s: [0, 10], speed_kmh: [36, 36], hills } as const;
  const trace = roadTrace({ ...road, time_s: [...road.time_s], speed_kmh: [...road.speed_kmh] }, cycleTexts);
  expect([...trace.time_s]).toEqual([0, 10, 20, 30]);
  expect(trace.restAdded?.before_m).toBe(50);
  expect(trace.profile?.distance_m[1]).toBe(50);
});

it("merges the samples of a recording at 1000 Hz", () => {
  const time_s = Array.from({ length: 10_001 }, (_, i) => i / 1000);
  const speed_kmh = time_s.map((at_s) => 36 * Math.sin((Math.PI * at_s) / 10) ** 2);
  const trace = roadTrace({ kind: "trace", id: "a", title: "A", time_s, speed_kmh }, cycleTexts);
  expect(trace.time_s).toHaveLength(101);
});

it("keeps what the log behind it leaves open, through the stretches added at rest", () => {
  const spread = {
    energy_ratio: { low: 0.9, high: 1.12 },
    distance_ratio: { low: 0.99, high: 1.01 },
    climb_m: { low: 10, high: 20 },
  };
  const trace = roadTrace(
    { kind: "trace", id: "a", title: "A", time_s: [0, 10], speed_kmh: [36, 36], spread },
    cycleTexts,
  );
  expect(trace.restAdded).toBeDefined();
  expect(trace.spread).toEqual(spread);
});
