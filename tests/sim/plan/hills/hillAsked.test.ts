import { expect, it } from "vitest";
import { hillAsked } from "../../../../sim/plan/hills/hillAsked.ts";
import { evenSlope, steadyTrace } from "../../../support/bareCar.ts";

const level = steadyTrace(10, 30, 1);
const hilly = steadyTrace(10, 30, 1, evenSlope(0.1, 300));
const sine = 0.1 / Math.sqrt(1 - 0.01);

it("is the hill as typed, else as the job asks for it, else the steepest 60 m of the road", () => {
  expect(hillAsked({ startHill_ratio: 0.2 }, hilly, { grade_ratio: 0.3, length_m: 80 })).toEqual({
    grade_ratio: 0.3,
    length_m: 80,
    from: "typed",
  });
  expect(hillAsked({ startHill_ratio: 0.2, hillLength_km: 0.4 }, hilly)).toMatchObject({
    grade_ratio: 0.2,
    length_m: 400,
    from: "typed",
  });
  expect(hillAsked({}, hilly)).toEqual({
    grade_ratio: expect.closeTo(sine, 9),
    length_m: expect.closeTo(60, 9),
    from: "road",
  });
  expect(hillAsked({ hillLength_km: 2 }, hilly)).toMatchObject({ length_m: 2000, from: "road" });
});

it("is a kilometre long where only its gradient is known, and none where nothing is asked and the road is level", () => {
  expect(hillAsked({ startHill_ratio: 0.2 }, level)).toMatchObject({ length_m: 1000 });
  expect(hillAsked({}, level)).toBeUndefined();
});
