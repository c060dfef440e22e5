import { expect, it } from "vitest";
import type { ChargeFigures, ChargeRow } from "../../../../sim/index.ts";
import { costWords, hoursCell, paceWords } from "../../../../web/sections/parts/chargeWords.ts";

it("says the hours of a charge, and that it is the whole pack", () => {
  const figures = { time_h: 3.25 } as ChargeFigures;
  expect(hoursCell(undefined)).toBe("–");
  expect(hoursCell({ ...figures, isMoreThanPack: true } as ChargeFigures)).toBe(`${hoursCell(figures)} (all)`);
});

it("says what a charge costs, in a currency where there is one", () => {
  expect([costWords(undefined, "EUR"), costWords(1.5, undefined), costWords(1.5, "EUR")]).toEqual([
    "–",
    "1.50",
    "1.50 EUR",
  ]);
});

it("says what sets the pace, and so what another supply would change", () => {
  const pace = (limit: ChargeRow["limit"], power_kW?: number) =>
    paceWords({ limit } as ChargeRow, { charger: { power_kW } } as Parameters<typeof paceWords>[1]);
  expect(pace("charger")).toMatch(/a bigger supply changes nothing/);
  expect(pace("cells")).toMatch(/neither a bigger supply nor a bigger charger/);
  expect(pace("supply", 6.6)).toMatch(/up to the charger’s 6.6 kW\.$/);
  expect(pace(undefined)).toBe("");
});
