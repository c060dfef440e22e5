import { expect, it } from "vitest";
import { Vehicles } from "../../../../sim/route/table/vehicles.ts";

const vehiclesOf = (...cells: readonly string[]) => {
  const vehicles = new Vehicles();
  for (const cell of cells) vehicles.add(cell);
  return vehicles;
};

it("chooses the car with most rows, and asks", () => {
  const chosen = vehiclesOf("Van", " Saloon ", "Saloon", "").choose(undefined, "a.csv");
  expect([0, 1, 2, 3].map((i) => chosen?.isOf(i))).toEqual([false, true, true, false]);
  expect(chosen?.question).toMatchObject({ choices: ["Saloon", "Van"], guess: "Saloon", decided: false });
  expect(chosen?.question.evidence).toBe("2 cars in one file, Saloon with 2 rows, Van with 1 row");
});

it("takes the car given, if it is there", () => {
  const vehicles = vehiclesOf("Van", "Saloon", "Saloon");
  expect(vehicles.choose("Van", "a.csv")?.isOf(0)).toBe(true);
  expect(() => vehicles.choose("Coupe", "a.csv")).toThrow('found "Coupe", a.csv holds Saloon, Van');
});

it("has nothing to choose of one car, or of more names than there are cars", () => {
  expect(vehiclesOf("Van", "Van", "").choose(undefined, "a.csv")).toBeUndefined();
  const names = Array.from({ length: 21 }, (_, i) => `trip ${i}`);
  expect(vehiclesOf(...names).choose(undefined, "a.csv")).toBeUndefined();
});
