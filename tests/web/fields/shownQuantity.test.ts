import { expect, it } from "vitest";
import { shownQuantity } from "../../../web/fields/shownQuantity.ts";

it("shows what was typed, and the unit that a bare number has", () => {
  expect(shownQuantity("mass", 723.9, "14 1/4 cwt", "metric")).toEqual({ text: "14 1/4 cwt", unit: "kg" });
  expect(shownQuantity("mass", 900, undefined, "metric")).toEqual({ text: "900", unit: "kg" });
  expect(shownQuantity("mass", undefined, undefined, "metric").text).toBe("");
});

it("writes a bare number anew for a reader of other units", () => {
  // 900 kg over 0.45359237 kg.
  expect(shownQuantity("mass", 900, "900", "british")).toEqual({ text: "1984.16", unit: "lb" });
  expect(shownQuantity("mass", 900, "900 kg", "british").text).toBe("900 kg");
});

it("keeps the unit in a gradient, which may be written three ways", () => {
  expect(shownQuantity("gradient", 0.125, undefined, "metric")).toEqual({ text: "12.5 %", unit: "" });
});
