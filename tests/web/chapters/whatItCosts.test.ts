import { expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import whatItCosts from "../../../web/chapters/whatItCosts.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const valuesOf = (changes: Readonly<Record<string, unknown>> = {}, id?: string): Values =>
  sectionValues(readJob(changedDemo(changes, id)));
const said = (values: Values) => whatItCosts.sentence(whatItCosts.compute(values)).replace(/[\u00a0\u202f]/g, " ");

it("says price, saving and payback of the pack that is shown, and draws it beside the alternative", () => {
  const values = valuesOf();
  expect(said(values)).toMatch(
    /^13 kWh costs 11 300 to 16 400 GBP, 6700 to 13 200 GBP more than the alternative \(engine rebuild\)\. At 8000 km a year it saves 1000 to 1200 GBP a year\. It pays back in about 9 years, but not within 10 years if everything turns out badly\./,
  );
  const figure = whatItCosts.plot(whatItCosts.compute(values), drawing(640));
  expect(figure?.chart.table.rows).toHaveLength(2 * 11);
  expect(figure?.chart.read(0).values.map(({ label }) => label)).toEqual(["13 kWh", "engine rebuild"]);
  expect(figure?.chart.alt).toMatch(/their middle lines meet after 8\.\d years\.$/);
});

it("says in words that the vineyard's pick-up never pays back, and from where it would", () => {
  expect(said(valuesOf({}, "vineyard-pickup"))).toMatch(
    /It does not pay back within 10 years; it would from about \d+ km a year\./,
  );
});

it("says what is not priced in the place of a figure", () => {
  const none = valuesOf({ costs: undefined });
  expect(said(none)).toBe("Not priced yet: work, cells and running costs are entered under Money.");
  expect(whatItCosts.plot(whatItCosts.compute(none), drawing(640))).toBeUndefined();
  expect(said(valuesOf({ "costs.running.price_perl": undefined }))).toMatch(/The price of fuel is not entered\./);
});

it("shows a currency that is HTML as text", () => {
  const figure = whatItCosts.plot(whatItCosts.compute(valuesOf({ currency: "<b>x</b>" })), drawing(640));
  expect(figure?.chart.svg.querySelector("b")).toBeNull();
  expect(figure?.chart.svg.textContent).toContain("(<b>x</b>)");
});
