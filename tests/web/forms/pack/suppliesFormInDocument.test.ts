import { expect, it } from "vitest";
import { supplies as generic } from "../../../../shared/parts/supplies.ts";
import { suppliesForm } from "../../../../web/forms/pack/suppliesForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page() {
  const shown = formPage(demoJob(), suppliesForm);
  return { ...shown, names: () => shown.job().supplies.map(({ name }) => name) };
}
const [garage, wall] = ["Garage, household socket", "Wall unit, if one were fitted"];

it("adds household sockets at the end, each under a name of its own", () => {
  const { press, names, job } = page();
  press(/^Add a place$/);
  press(/^Add a place$/);
  const usual = "Household socket, 10 A";
  expect(names()).toEqual([garage, wall, usual, `${usual}, 2`]);
  expect(job().supplies[3]).toMatchObject({ kind: "household", current_A: 10 });
});

it("copies a place behind itself with its hours and prices", () => {
  const { press, names, job } = page();
  press(/^Copy Garage/);
  expect(names()).toEqual([garage, `${garage}, 2`, wall]);
  expect(job().supplies[1]).toEqual({ ...job().supplies[0], name: `${garage}, 2` });
});

it("offers usual supplies until there are eight places", () => {
  const { press, has, choose, names } = page();
  for (let count = 2; count < 7; count++) press(/^Add a place$/);
  choose("#pick-supply", generic[0].id);
  press(/^Add it$/);
  expect(names()).toHaveLength(8);
  expect(has("#pick-supply")).toBe(false);
});

it("starts cheap hours at night, without a price until one is typed", () => {
  const { press, job } = page();
  press(/^Remove the cheap hours at Garage/);
  expect(job().supplies[0].cheap).toBeUndefined();
  press(/^Add the cheap hours at Garage/);
  expect(job().supplies[0].cheap).toEqual({ from: "23:30", to: "7:30" });
});
