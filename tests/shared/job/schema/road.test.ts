import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

const road = { kind: "trace", id: "own", title: "Own", time_s: [0, 1, 2], speed_kmh: [0, 30, 0] };
const faults = (changes: object) => faultsOf({ "roads.0": { ...road, ...changes }, drivenRoad: undefined });

it("takes a road with hills that cars climb", () => {
  expect(faults({ hills: { distance_km: [0, 0.1], elevation_m: [0, 45] } })).toEqual([]);
});

it.each<[object, string]>([
  [{ speed_kmh: [0, 30] }, "roads.0.speed_kmh: found 2 values, 3 wanted: one for each of time_s"],
  [{ time_s: [0, 2, 1] }, "roads.0.time_s.2: found 1 s after 2 s, times must rise"],
  [
    { hills: { distance_km: [0.1, 0.2], elevation_m: [0, 1] } },
    "roads.0.hills.distance_km.0: found 0.1 km, the first distance must be 0 km",
  ],
  [
    { hills: { distance_km: [0, 0.1], elevation_m: [0, 46] } },
    "roads.0.hills.elevation_m.1: found 46 m of rise in 100 m, at most 0.45 m in 1 m allowed",
  ],
  [
    {
      spread: {
        energy_ratio: { low: 1.2, high: 1.1 },
        distance_ratio: { low: 1, high: 1 },
        climb_m: { low: 0, high: 1 },
      },
    },
    "roads.0.spread.energy_ratio.low: found 1.2 above high 1.1, low is at most high",
  ],
])("refuses %j", (changes, sentence) => {
  expect(faults(changes)).toEqual([sentence]);
});
