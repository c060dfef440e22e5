import { expect, it } from "vitest";
import { readPart } from "../../../shared/parts/readPart.ts";
import { SurfacePart, surfaces } from "../../../shared/parts/surfaces.ts";

it.each(surfaces.map((surface) => [surface.id, surface] as const))(
  "%s is a part with an origin and a band",
  (_, part) => {
    expect(readPart(SurfacePart, structuredClone(part))).toEqual(part);
    const { low = Number.NaN, high = Number.NaN } = part.origins["grip_coeff"];
    expect(part.data.grip_coeff).toBeGreaterThanOrEqual(low);
    expect(part.data.grip_coeff).toBeLessThanOrEqual(high);
  },
);

it("wet tarmac holds less than dry, snow less than either", () => {
  const grip = (id: string) => surfaces.find((each) => each.id === id)?.data.grip_coeff ?? Number.NaN;
  expect(grip("wet-tarmac")).toBeLessThan(grip("dry-tarmac"));
  expect(grip("packed-snow")).toBeLessThan(grip("wet-tarmac"));
});
