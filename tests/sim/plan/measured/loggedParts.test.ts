import { expect, it } from "vitest";
import { loggedParts } from "../../../../sim/plan/measured/loggedParts.ts";
import { steadyTrace } from "../../../support/bareCar.ts";

const part = (start_s: number, hours: number) => ({ start_s, trace: steadyTrace(10, hours * 3600, 60) });
const kept = (parts: readonly ReturnType<typeof part>[], at_s: readonly number[], offset_s = 0) =>
  loggedParts(parts, { time_s: Float64Array.from(at_s) }, { offset_s }).map(({ start_s }) => start_s);

it("are those within which volts and amps were logged, by the clock of the motion", () => {
  const parts = [part(0, 1), part(10_000, 1), part(20_000, 1)];
  expect(kept(parts, [3601, 10_000, 19_999])).toEqual([10_000]);
  expect(kept(parts, [3600, 20_000])).toEqual([0, 20_000]);
  expect(kept(parts, [500], 10_000)).toEqual([10_000]);
  expect(kept(parts, [15_000], -2000)).toEqual([10_000]);
  expect(kept(parts, [5000])).toEqual([]);
});

it("are the longest of them up to six hours, in their order, and the longest however long it is", () => {
  const parts = [part(0, 1), part(10_000, 3), part(30_000, 2), part(50_000, 0.5)];
  const all = parts.map(({ start_s }) => start_s);
  expect(kept(parts, all)).toEqual([0, 10_000, 30_000]);
  expect(kept([part(0, 1), part(10_000, 7)], [0, 10_000])).toEqual([10_000]);
});
