import { expect, it } from "vitest";
import { traceFigures, tracesTable } from "../../../../sim/cli/printing/traceFigures.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";
import { evenSlope, steadyTrace } from "../../../support/bareCar.ts";

/** 100 s at 10 m/s, on a road that rises by a tenth. */
const hilly = steadyTrace(10, 100, 1, evenSlope(0.1, 1000));
const level = { ...steadyTrace(20, 50, 1), id: "level" };

it("has speeds in km/h and distances in km, and no climb where heights are not known", () => {
  expect(traceFigures(characteristics(hilly))).toMatchObject({
    duration_s: 100,
    distance_km: expect.closeTo(1, 9),
    mean_kmh: expect.closeTo(36, 9),
    max_kmh: expect.closeTo(36, 9),
    moving_s: 100,
    stops: 0,
    climb_m: expect.closeTo(100, 6),
  });
  expect(traceFigures(characteristics(level)).climb_m).toBeNull();
});

it("gives each trace a column, and several a last one for all of them", () => {
  const found = [hilly, level].map(characteristics);
  const both = tracesTable([hilly, level], found, found[0]).split("\n");
  expect(both[0].trim().split(/\s{2,}/)).toEqual(["steady", "level", "all of them"]);
  expect(both.find((line) => line.includes("climb"))).toMatch(/climb \(m\)\s+100\s+not known\s+100$/);
  const alone = tracesTable([level], [found[1]], found[1]);
  expect(alone).not.toMatch(/all of them|climb/);
});
