import { expect, it } from "vitest";
import { gravityPlace_m, withMass } from "../../../sim/vehicle/axleLoads.ts";

const wheelbase_m = 2.5;
const loads = { front_kg: 500, rear_kg: 400 };

// Moments about the front axle, worked by hand: 100 kg at 2 m of 2.5 m is 80 kg at the rear and 20 kg in front.
it("shares a mass between the axles by its moments", () => {
  expect(withMass(loads, { mass_kg: 100, place_m: 2 }, wheelbase_m)).toEqual({ front_kg: 520, rear_kg: 480 });
});

it("puts a mass over an axle on that axle alone", () => {
  expect(withMass(loads, { mass_kg: 90, place_m: 0 }, wheelbase_m)).toEqual({ front_kg: 590, rear_kg: 400 });
  expect(withMass(loads, { mass_kg: 90, place_m: 2.5 }, wheelbase_m)).toEqual({ front_kg: 500, rear_kg: 490 });
});

it("lightens the front axle by what lies behind the rear one, and the rear one by what lies in front of both", () => {
  expect(withMass(loads, { mass_kg: 50, place_m: 3 }, wheelbase_m)).toEqual({ front_kg: 490, rear_kg: 460 });
  expect(withMass(loads, { mass_kg: 50, place_m: -0.5 }, wheelbase_m)).toEqual({ front_kg: 560, rear_kg: 390 });
});

it("is undone by taking the same mass out", () => {
  const added = withMass(loads, { mass_kg: 64, place_m: 1.25 }, wheelbase_m);
  expect(withMass(added, { mass_kg: -64, place_m: 1.25 }, wheelbase_m)).toEqual(loads);
});

it("finds the centre of gravity where the axle loads balance", () => {
  expect(gravityPlace_m(loads, wheelbase_m)).toBeCloseTo((400 * 2.5) / 900, 12);
  expect(gravityPlace_m({ front_kg: 450, rear_kg: 450 }, wheelbase_m)).toBeCloseTo(1.25, 12);
});
