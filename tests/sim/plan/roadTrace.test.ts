import { expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { roadTrace } from "../../../sim/plan/roadTrace.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

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
