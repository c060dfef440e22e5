import { expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { testedForm } from "../../../../web/forms/pack/testedForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page(...capacities_Ah: number[]) {
  const tested = capacities_Ah.map((capacity_Ah) => ({ capacity_Ah }));
  const job = withPath(demoJob(), "module.tested", tested.length === 0 ? undefined : tested);
  const shown = formPage(job, testedForm);
  return { ...shown, tested: () => shown.job().module.tested?.map(({ capacity_Ah }) => capacity_Ah) };
}

it("begins with the capacity that holds for all, and goes on with that of the last", () => {
  const { press, tested } = page();
  press(/^Add a tested module$/);
  expect(tested()).toEqual([38]); // as the demo's module
  const more = page(38, 36.5);
  more.press(/^Add a tested module$/);
  expect(more.tested()).toEqual([38, 36.5, 36.5]);
});

it("is no list any more once its last module is removed: all are as entered then", () => {
  const { press, tested } = page(38, 36.5);
  press(/^Remove module 1$/);
  expect(tested()).toEqual([36.5]);
  press(/^Remove module 1$/);
  expect(tested()).toBeUndefined();
});

it("takes a column of a spreadsheet", () => {
  const { at, tested } = page(38);
  const event = new Event("paste", { bubbles: true, cancelable: true });
  const clipboardData = { getData: () => "37.2\n36.9\n38.1" };
  at("#field-module-tested-0-capacity_Ah").dispatchEvent(Object.assign(event, { clipboardData }));
  expect(tested()).toEqual([37.2, 36.9, 38.1]);
});
