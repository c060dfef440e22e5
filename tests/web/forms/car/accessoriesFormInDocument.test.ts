import { expect, it } from "vitest";
import { accessoriesForm } from "../../../../web/forms/car/accessoriesForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const light = demoJob().accessories.items[0]; // on for 30 % of the drive, in winter 70 %
function page(count?: number) {
  const job = demoJob();
  const items = count === undefined ? job.accessories.items : Array.from({ length: count }, () => light);
  return formPage({ ...job, accessories: { ...job.accessories, items } }, accessoriesForm);
}

it("adds something of the workshop's own at the end, always on from the 12 V battery", () => {
  const { press, job } = page();
  press(/^Add a row$/);
  expect(job().accessories.items.at(-1)).toEqual({
    name: "something of our own",
    power_W: 50,
    duty_frac: 1,
    supply: "12V",
  });
  expect(job().accessories.items).toHaveLength(5);
});

it("copies a row behind itself and removes the one that is meant", () => {
  const { press, job } = page();
  press(/^Copy wipers$/);
  const names = () => job().accessories.items.map(({ name }) => name);
  expect(names()).toEqual(["lights", "wipers", "wipers", "blower", "demister"]);
  press(/^Remove lights$/);
  expect(names()).toEqual(["wipers", "wipers", "blower", "demister"]);
});

it("offers usual accessories until the list is full, at 30", () => {
  expect(page(29).has("#pick-accessory")).toBe(true);
  const { has, buttons } = page(30);
  expect(has("#pick-accessory")).toBe(false);
  expect(buttons()).not.toContain("Add a row");
});
