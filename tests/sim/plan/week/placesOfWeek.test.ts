import { expect, it } from "vitest";
import { placesOfWeek } from "../../../../sim/plan/week/placesOfWeek.ts";
import type { Parking } from "../../../../sim/plan/week/weekReport.ts";

const parked = (supply: string | undefined, wall_kWh: number, cost?: number): Parking => ({
  ...{ from_h: 0, to_h: 1, from_frac: 0, to_frac: 0, given_kWh: 0, car_kWh: 0, stored_kWh: 0, waited_h: 0 },
  ...{ isCold: false, pack_degC: 10, wall_kWh },
  ...(supply !== undefined && { supply }),
  ...(cost !== undefined && { cost }),
});

it("adds up energy and cost at each place, and leaves out where the car is not plugged in", () => {
  const parkings = [parked("Depot", 5, 2), parked(undefined, 0, 0), parked("Home", 8, 1), parked("Depot", 1, 0.4)];
  expect(placesOfWeek({ parkings })).toEqual([
    { supply: "Depot", wall_kWh: 6, cost: expect.closeTo(2.4, 12) },
    { supply: "Home", wall_kWh: 8, cost: 1 },
  ]);
});

it("has no cost of a place where the price of one charge is not known, before or after others", () => {
  for (const parkings of [
    [parked("Home", 8, 1), parked("Home", 2), parked("Home", 1, 1)],
    [parked("Home", 2), parked("Home", 9, 1)],
  ])
    expect(placesOfWeek({ parkings })).toEqual([{ supply: "Home", wall_kWh: 11 }]);
});

it("is nothing for a car that is never plugged in", () => {
  expect(placesOfWeek({ parkings: [parked(undefined, 0, 0)] })).toEqual([]);
});
