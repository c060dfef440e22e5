import { expect, it } from "vitest";
import { spreadOfTrips } from "../../../../sim/route/clean/spreadOfTrips.ts";

/** A piece whose draws need so many joules, the second of which was taken. */
const piece = (from: number, to: number, energy_J: readonly number[]) => ({
  from,
  to,
  chosen: 1,
  energy_J: Float64Array.from(energy_J),
  distance_m: Float64Array.of(100, 100, 100),
  climb_m: Float64Array.of(1, 2, 3),
  goes: Float64Array.of(1, 1, 2),
});
const log = {
  pieces: [piece(0, 100, [90, 100, 110]), piece(100, 200, [50, 100, 150])],
  unmodelled: { energy_frac: 0, distance_frac: 0, stops_frac: 0 },
};

it("is that of the pieces driven in those trips only, taken together", () => {
  // 10 and 90 % of three draws lie four fifths of the way out from the middle one.
  const first = spreadOfTrips(log, [{ fromRow: 10, toRow: 90 }]);
  expect(first?.energy_ratio.low).toBeCloseTo(0.92, 12);
  expect(first?.energy_ratio.high).toBeCloseTo(1.08, 12);
  const both = spreadOfTrips(log, [
    { fromRow: 10, toRow: 90 },
    { fromRow: 110, toRow: 190 },
  ]);
  expect(both?.energy_ratio.low).toBeCloseTo(0.76, 12);
  expect(both?.climb_m.high).toBeCloseTo(5.6, 12);
});

it("has what the model leaves out on top, and is nothing where nothing was drawn", () => {
  const wide = spreadOfTrips({ ...log, unmodelled: { energy_frac: 0.06, distance_frac: 0, stops_frac: 0 } }, [
    { fromRow: 10, toRow: 90 },
  ]);
  expect(wide?.energy_ratio.low).toBeCloseTo(1 - Math.hypot(0.08, 0.06), 12);
  expect(spreadOfTrips(log, [{ fromRow: 300, toRow: 400 }])).toBeUndefined();
});
