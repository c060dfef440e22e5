import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

const coastDown = (f0_N: number, f1_Npkmh: number, f2_Npkmh2: number) =>
  faultsOf({ "vehicle.roadLoad": { kind: "coastDown", f0_N, f1_Npkmh, f2_Npkmh2, mass_kg: 1000 } });

it("takes coast-down terms whose force is never below nothing, though one of them is", () => {
  // 100 - 2 v + 0.05 v² is least at 20 km/h: 80 N.
  expect(coastDown(100, -2, 0.05)).toEqual([]);
});

it("refuses terms by which the road would push the car", () => {
  // 100 - 10 x 150, and 100 - 10 v + 0.1 v² at its least, 50 km/h.
  expect(coastDown(100, -10, 0)).toEqual([
    "vehicle.roadLoad.f1_Npkmh: found terms that make -1400 N at 150 km/h, 0 N or more wanted up to 150 km/h",
  ]);
  expect(coastDown(100, -10, 0.1)).toEqual([
    "vehicle.roadLoad.f1_Npkmh: found terms that make -150 N at 50 km/h, 0 N or more wanted up to 150 km/h",
  ]);
});
