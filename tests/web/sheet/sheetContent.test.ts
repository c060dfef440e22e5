import { expect, it } from "vitest";
import { demoJob } from "../../support/demoJob.ts";
import { sheetOf } from "./sheetByHand.ts";

const facts = (...of: Parameters<typeof sheetOf>) => Object.fromEntries(sheetOf(...of).facts);
const demo = demoJob();
/** A name without the star of a pack that was asked for. */
const bare = (cell = "") => cell.replace(/\*$/, "");

it("has as many cells in every row as the table has columns, with prices or without", () => {
  const { costs: _, ...unpriced } = demo;
  for (const { table } of [sheetOf(), sheetOf({ ...unpriced, costs: undefined } as Partial<typeof demo>)]) {
    expect(table.rows.length).toBeGreaterThan(0);
    for (const { cells } of table.rows) expect(cells).toHaveLength(table.head.length);
  }
});

it("speaks for the pack that the workshop chose, and marks its row alone", () => {
  const last = demo.packs.length - 1;
  const sheet = sheetOf({}, { chosen: last });
  expect(sheet.chosen).toBe(last);
  expect(sheet.table.rows.filter(({ isChosen }) => isChosen).map(({ cells }) => bare(cells[0]))).toEqual([
    sheet.factsTitle.replace("With ", ""),
  ]);
});

it("cuts a name that would push the foot off the page", () => {
  const packs = demo.packs.map((pack, i) => ({ ...pack, name: `Pack ${i} from an invented breaker's yard` }));
  const names = sheetOf({ packs }).table.rows.map(({ cells }) => bare(cells[0]));
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) expect(name).toMatch(/^Pack \d from a…$/); // fourteen letters
});

it("says how winter is reckoned: by the day driven and its heater, else by a factor", () => {
  const driven = (kind: "none" | "fuel" | "byHour") =>
    ({ winter: { temperature_degC: -5, heat: { kind, power_kW: 2 } } }) as unknown as NonNullable<
      typeof demo.conditions
    >;
  const allowance = { ...demo.allowance, winter_ratio: 1.3, aged_frac: 0.8 };
  expect(facts({ allowance, conditions: undefined })["Conditions"]).toContain("winter taken as 1.3 times the energy");
  expect(facts({ allowance, conditions: driven("none") })["Conditions"]).toMatch(/driven at .5 °C, cabin not heated/);
  expect(facts({ allowance, conditions: driven("fuel") })["Conditions"]).toContain("cabin heated by fuel");
  expect(facts({ allowance, conditions: driven("byHour") })["Conditions"]).toContain("cabin electric heater");
  expect(facts({ allowance })["Conditions"]).toContain("ten years as 80 % of the capacity");
});

it("says that the plated weight is not known where it is not", () => {
  const { gross_kg: _, ...vehicle } = demo.vehicle;
  expect(facts({ vehicle })["Weight"]).toContain("plated weight not known");
  expect(facts({ vehicle: { ...vehicle, gross_kg: 1400 } })["Weight"]).toMatch(/as driven; plated 1,?400 kg$/);
});
