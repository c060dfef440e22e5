import { expect, it } from "vitest";
import { moneyAxis } from "../../../../../web/charts/parts/axes/moneyAxis.ts";

it("counts in thousands from a hundred thousand on, and says so", () => {
  expect(moneyAxis("Price", "EUR", 99_999)).toEqual({ scale: 1, label: "Price (EUR)" });
  expect(moneyAxis("Price", "EUR", 100_000)).toEqual({ scale: 1000, label: "Price, thousands (EUR)" });
  expect(moneyAxis("Price", "", 5)).toEqual({ scale: 1, label: "Price" });
});
