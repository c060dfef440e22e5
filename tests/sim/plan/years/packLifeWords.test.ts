import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { PackLife } from "../../../../sim/plan/years/packLife.ts";
import { isReplaced, packLifeWords, replaceCaution } from "../../../../sim/plan/years/packLifeWords.ts";

const modules: PackLife["modules"] = {
  ...{ count: 15, layout: "5s3p", mass_kg: 99, full_V: 126, strings: 3 },
  cost: { value: 1550, low: 1400, high: 1700 },
};
const lifeOf = (years: Pick<PackLife, "earliest_years" | "latest_years">, of = modules): PackLife => ({
  ...{ name: "13 kWh", day_km: 38, winter: [], modules: of },
  ...years,
});
const said = (life: PackLife) => packLifeWords(life, "GBP").map((each) => messageIn(each, "metric"));

describe("how long a pack does the day", () => {
  it.each([
    [{}, "By the published laws of ageing 13 kWh still does the usual day of 38 km in winter after 15 years."],
    [
      { earliest_years: 0, latest_years: 0 },
      "13 kWh does not do the usual day of 38 km in winter when new, so age does not decide.",
    ],
    [
      { earliest_years: 11 },
      "By the published laws of ageing 13 kWh no longer does the usual day of 38 km in winter after 11 years at the earliest; at best it still does after 15 years.",
    ],
    [
      { earliest_years: 1, latest_years: 1 },
      "By the published laws of ageing 13 kWh no longer does the usual day of 38 km in winter after one year.",
    ],
    [
      { earliest_years: 7, latest_years: 12 },
      "By the published laws of ageing 13 kWh no longer does the usual day of 38 km in winter after 7 years at the earliest, 12 years at the latest.",
    ],
  ])("is said of %o", (years, words) => {
    expect(said(lifeOf(years))[0]).toBe(words);
  });

  it("is followed by new modules only where age ends it", () => {
    expect(said(lifeOf({}))).toHaveLength(1);
    expect(said(lifeOf({ earliest_years: 0, latest_years: 0 }))).toHaveLength(1);
    expect(said(lifeOf({ earliest_years: 11 }))).toHaveLength(3);
    expect([{}, { earliest_years: 0 }, { earliest_years: 1 }].map(isReplaced)).toEqual([false, false, true]);
  });
});

describe("what can be done then", () => {
  it("is new modules of the same kind and layout, with mass and price", () => {
    expect(said(lifeOf({ earliest_years: 7 }))[1]).toBe(
      "Then its 15 modules can be replaced by others of the same kind and layout, 5s3p: 99 kg, 1400 to 1700\u00a0GBP at today’s price. Where that module is still made, boxes, cables and settings stay.",
    );
    const { cost: _cost, ...free } = modules;
    expect(said(lifeOf({ earliest_years: 7 }, free))[1]).toMatch(/5s3p: 99 kg, their price not entered\./);
    const { count: _count, layout: _layout, ...whole } = modules;
    expect(said(lifeOf({ earliest_years: 7 }, whole))[1]).toMatch(
      /^Then its cells can be replaced .*: 99 kg with boxes, 1400/,
    );
  });

  it("warns of mixing aged and new modules, and of the voltage", () => {
    const words = (strings: number) => messageIn(replaceCaution({ ...modules, strings }), "metric");
    expect(words(3)).toBe(
      "Never mix aged and new modules in one string, nor a new string beside aged ones, without the maker’s word. The pack is at traction voltage, 126 V when full: licensed practice and local codes decide who may open it.",
    );
    expect(words(1)).toMatch(/^Never mix aged and new modules in one string, without the maker’s word\./);
  });
});
