import { expect, it } from "vitest";
import { bodies } from "../../../shared/parts/bodies.ts";

// Drag coefficients. Saloon, open two-seater, estate: [BoschHandbook, table of drag coefficients], from memory. The rest:
// common practice, no source. Areas: common practice, no source; a microcar is narrower than any band in print.
const bands: Record<string, { drag: [number, number]; area_m2: [number, number] }> = {
  saloon: { drag: [0.4, 0.55], area_m2: [1.4, 1.9] },
  "open-two-seater": { drag: [0.5, 0.7], area_m2: [1.4, 1.9] },
  estate: { drag: [0.5, 0.6], area_m2: [1.4, 2] },
  microcar: { drag: [0.42, 0.5], area_m2: [1.2, 1.5] },
  "light-van": { drag: [0.35, 0.5], area_m2: [2, 3] },
  "box-body": { drag: [0.45, 0.65], area_m2: [3, 4.5] },
  "pick-up-4x4": { drag: [0.5, 0.65], area_m2: [2.4, 3] },
};

it("lists the seven kinds of body", () => {
  expect(bodies.map(({ id }) => id).sort()).toEqual(Object.keys(bands).sort());
});

it.each(bodies.map((body) => [body.id, body] as const))(
  "%s stays inside the bands in print, ends and all",
  (id, body) => {
    const { drag, area_m2 } = bands[id];
    const { drag_coeff, frontalArea_m2 } = body.origins;
    expect(drag_coeff.low).toBeGreaterThanOrEqual(drag[0]);
    expect(drag_coeff.high).toBeLessThanOrEqual(drag[1]);
    expect(frontalArea_m2.low).toBeGreaterThanOrEqual(area_m2[0]);
    expect(frontalArea_m2.high).toBeLessThanOrEqual(area_m2[1]);
  },
);
