import { expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { quoteForm } from "../../../../web/forms/costs/quoteForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

it("is nothing in a job without costs", () => {
  expect(formPage(withPath(demoJob(), "costs", undefined), quoteForm).said()).toBe("");
});

it("adds a line that costs nothing yet, and copies one with its figures", () => {
  const { press, job } = formPage(demoJob(), quoteForm);
  const lines = () => job().costs?.work ?? [];
  expect(lines()).toHaveLength(7);
  press(/^Add a line$/);
  expect(lines()[7]).toEqual({ name: "Work", parts: { low: 0 }, hours: { low_h: 0 } });
  press(/^Copy Adapter plate, coupler$/);
  expect(lines()).toHaveLength(9);
  expect(lines()[2]).toEqual({
    name: "Adapter plate, coupler",
    parts: { low: 420, high: 560 },
    hours: { low_h: 12, high_h: 18 },
  });
});

it("gives a price of its own to the pack that it is asked for, of the whole pack", () => {
  const { press, job } = formPage(demoJob(), quoteForm);
  press(/^Add the price of the cells of 13 kWh$/);
  expect(job().packs.map(({ cellPrice }) => cellPrice)).toEqual([
    undefined,
    { per: "pack", price: { low: 0 } },
    undefined,
    undefined,
    undefined,
  ]);
});
