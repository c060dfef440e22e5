import { expect, it } from "vitest";
import { fieldAt, knownField, labelOf } from "../../../../web/editing/fieldTable/fieldAt.ts";

it("is the field of a path, whatever place in a list", () => {
  expect(fieldAt("packs.3.floor_frac")).toBe(fieldAt("packs.0.floor_frac"));
  expect(knownField("no.such")).toBeUndefined();
  expect(() => fieldAt("no.such")).toThrow("no field for no.such");
});

it("has a label with its place in a list, and the path where there is no field", () => {
  expect(labelOf("packs.2.floor_frac")).toBe(`${fieldAt("packs.0.floor_frac").label}, no. 3`);
  expect(labelOf("vehicle.kerb_kg")).toBe(fieldAt("vehicle.kerb_kg").label);
  expect(labelOf("no.such")).toBe("no.such");
});
