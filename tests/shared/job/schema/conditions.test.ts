import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

const weather = (name: string) => ({ name, temperature_degC: -5 });

it("takes conditions of different names", () => {
  expect(faultsOf({ conditions: { old: {}, others: [weather("frost"), weather("snow")] } })).toEqual([]);
});

it("refuses the same name twice, and weather that no place has", () => {
  expect(faultsOf({ conditions: { old: {}, others: [weather("frost"), weather("frost")] } })).toEqual([
    'conditions.others.1.name: found "frost" twice, names must differ',
  ]);
  expect(faultsOf({ conditions: { old: {}, winter: { temperature_degC: -60 } } })).toEqual([
    "conditions.winter.temperature_degC: found -60 degC, -40 to 55 degC allowed",
  ]);
});
