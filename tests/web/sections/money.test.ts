import { expect, it } from "vitest";
import { message } from "../../../shared/quantity/message.ts";
import type { CostPlan } from "../../../sim/index.ts";
import money from "../../../web/sections/money.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const values = sectionValues(demoJob());
const plan = values.costPlan as CostPlan;

function told(costPlan: CostPlan | undefined, packIndex = 1) {
  const result = money.compute({ costPlan, packIndex, units: "metric" });
  return {
    result,
    captions: [...money.plot(result, drawing(640))].map(({ caption }) => caption),
    sentence: money.sentence(result),
    summary: money.summary?.(result),
    attention: money.attention?.(result),
  };
}

/** The plan with its packs changed. */
const withPacks = (change: (pack: CostPlan["packs"][number]) => CostPlan["packs"][number]): CostPlan => ({
  ...plan,
  packs: plan.packs.map(change),
});
const unpriced = (pack: CostPlan["packs"][number]) => {
  const { total: _total, ...quote } = pack.quote;
  return { ...pack, quote };
};

it("is there for a job without costs, with nothing drawn", () => {
  expect(told(undefined)).toEqual({
    result: undefined,
    captions: [],
    sentence: "Not priced yet.",
    summary: "not priced yet",
    attention: [],
  });
});

it("has the price of the pack in view in its line, or that it is not all priced", () => {
  const total = { value: 12_000, low: 11_000, high: 13_000 };
  const priced = withPacks((pack) => ({ ...pack, quote: { ...pack.quote, total } }));
  expect(told(priced).summary).toMatch(/^13 kWh 11\s000 to 13\s000\sGBP$/);
  expect(told(withPacks(unpriced)).summary).toBe("13 kWh: not all priced");
});

it("draws prices only where a pack has one, and only beside alternatives that cost something", () => {
  expect(told(plan).captions[0]).toMatch(/^What does each pack cost/);
  expect(told(withPacks(unpriced)).captions[0]).toMatch(/^The quote with 13 kWh/);
  const [first, ...others] = plan.packs;
  const { result } = told({ ...plan, packs: [first, ...others.map(unpriced)] });
  const kept = plan.alternatives.filter(({ isAsItIs }) => !isAsItIs).map(({ name }) => name);
  expect(result?.bars.map(({ name }) => name)).toEqual([first.quote.pack, ...kept]);
});

it("says once what is missing for several packs", () => {
  const missing = [message`The price of fuel is not entered.`];
  expect(told(withPacks((pack) => ({ ...pack, missing }))).attention).toEqual(["The price of fuel is not entered."]);
});

it("tells of the first pack while the one in view is gone", () => {
  expect(told(plan, 99).result?.pack).toBe("8 kWh");
});
