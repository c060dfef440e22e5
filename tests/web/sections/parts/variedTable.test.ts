import { expect, it } from "vitest";
import type { VariedPack } from "../../../../sim/index.ts";
import { variedTable } from "../../../../web/sections/parts/variedTable.ts";

const input = (path: string, gain_km: number) => ({ open: { path }, left_frac: 0.5, gain_km });
const varied = (inputs: readonly object[]) => ({ pack: "A", variants: 128, inputs }) as unknown as VariedPack;

it("is nothing where no value is worth measuring", () => {
  expect(variedTable(varied([]), "metric")).toBeUndefined();
  expect(variedTable(varied([input("vehicle.kerb_kg", 0.05)]), "metric")).toBeUndefined();
});
