import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { axleLoads, overloads } from "../../../../sim/plan/weight/weigh.ts";
import { fixedly } from "../../../support/fixedly.ts";
import { job, weightsOf } from "./weighedByHand.ts";

describe("axle loads", () => {
  it("are those of moments worked by hand, to 0.1 kg", () => {
    const loads = axleLoads(job, weightsOf());
    const found = loads.map(({ name, front_kg, rear_kg }) => [name, front_kg, rear_kg] as const);
    // Out: 150 kg at 0 and 30 kg at 2700: rear -33.75, front -146.25. In: 60 kg at 200: rear 5, front 55.
    // Pack: 80 kg at -100: rear -3.333, front 83.333; 120 kg at 2600: rear 130, front -10.
    // Driver: rear 40.625, front 34.375. Load: 255 kg at 2000: rear 212.5, front 42.5.
    const byHand = [
      ["as it arrived", 500, 450],
      ["empty", 482.08, 547.92],
      ["driver alone", 516.46, 588.54],
      ["fully laden", 558.96, 801.04],
    ] as const;
    expect(found.map(([name]) => name)).toEqual(byHand.map(([name]) => name));
    found.forEach(([, front_kg, rear_kg], i) => {
      expect(Math.abs(front_kg - byHand[i][1])).toBeLessThan(0.1);
      expect(Math.abs(rear_kg - byHand[i][2])).toBeLessThan(0.1);
    });
  });

  it("have their total, and the share of it that rests in front", () => {
    const [arrived, empty] = axleLoads(job, weightsOf());
    expect(arrived).toMatchObject({ total_kg: 950, frontShare_frac: 500 / 950 });
    expect(arrived.gravityPlace_mm).toBeCloseTo((2400 * 450) / 950, 9);
    expect(empty.total_kg).toBeCloseTo(950 - 180 + 60 + 200, 9);
    expect(empty.frontShare_frac).toBeCloseTo(482.083 / 1030, 5);
    expect([arrived.pack, empty.pack]).toEqual([undefined, "only"]);
  });

  it("sum to the mass, and have their centre of gravity where it is, whatever is aboard", () => {
    const item = fc.record({
      name: fc.constant("x"),
      mass_kg: fc.integer({ min: 1, max: 300 }),
      place_mm: fc.integer({ min: -900, max: 4000 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 8 }), fc.array(item, { maxLength: 8 }), (into, load) => {
        const weights = weightsOf({ out: [], in: into, load });
        const sum = (items: readonly { mass_kg: number }[]) => items.reduce((total, { mass_kg }) => total + mass_kg, 0);
        const laden = axleLoads(job, weights).at(-1);
        const total_kg = 950 + 200 + 75 + sum(into) + sum(load);
        expect(Math.abs((laden?.front_kg ?? 0) + (laden?.rear_kg ?? 0) - total_kg)).toBeLessThan(1e-9 * total_kg);
        const moments =
          450 * 2400 +
          80 * -100 +
          120 * 2600 +
          75 * 1300 +
          [...into, ...load].reduce((at, { mass_kg, place_mm }) => at + mass_kg * place_mm, 0);
        expect(laden?.gravityPlace_mm).toBeCloseTo(moments / total_kg, 6);
      }),
      fixedly(100),
    );
  });

  it("are the same from four corners as from two axles", () => {
    const corners = { frontLeft_kg: 255, frontRight_kg: 245, rearLeft_kg: 220, rearRight_kg: 230 };
    expect(axleLoads(job, weightsOf({ weighed: corners }))).toEqual(axleLoads(job, weightsOf()));
  });

  it("with a trailer on its ball lighten the front axle", () => {
    const towing = axleLoads(job, weightsOf({ ball: { mass_kg: 60, place_mm: 3200 } }));
    const [laden, towed] = towing.slice(-2);
    expect(towed.name).toBe("fully laden, towing");
    expect(towed.front_kg - laden.front_kg).toBeCloseTo(-20, 9);
    expect(towed.rear_kg - laden.rear_kg).toBeCloseTo(80, 9);
  });
});

it("is over a plate, the gross mass and the tyres, each by itself, and not at exactly the limit", () => {
  const plates = { front_kg: 500, rear_kg: 700, gross_kg: 1200, rearTyres_kg: 690 };
  expect(overloads({ front_kg: 500, rear_kg: 700 }, weightsOf({ plates }))).toEqual([
    { what: "rear tyres", by_kg: 10 },
  ]);
  expect(overloads({ front_kg: 510, rear_kg: 720 }, weightsOf({ plates })).map(({ what }) => what)).toEqual([
    "front axle",
    "rear axle",
    "gross",
    "rear tyres",
  ]);
});
