import { expect, it } from "vitest";
import { packsForm } from "../../../../web/forms/pack/packsForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

// The demo's packs: 8, 13, 17, 21 and 29 kWh, the last of them asked for.
const page = (count = 5) => {
  const shown = formPage({ ...demoJob(), packs: demoJob().packs.slice(0, count) }, packsForm);
  return { ...shown, names: () => shown.job().packs.map(({ name }) => name) };
};

it("adds one like the last, under a name of its own, and asked for by nobody", () => {
  const { press, job, names } = page();
  press(/^Add a pack$/);
  const { isAskedFor: _asked, ...last } = demoJob().packs[4];
  expect(job().packs[5]).toEqual({ ...last, name: "29 kWh, copy" });
  press(/^Copy 29 kWh$/);
  expect(names().slice(4)).toEqual(["29 kWh", "29 kWh, copy 2", "29 kWh, copy"]);
});

it("shows no pack by choice once one is removed, since its number may be another's now, and keeps the last", () => {
  const { press, names, context, buttons } = page(2);
  context.view.packIndex.value = 1;
  press(/^Remove 8 kWh$/);
  expect(names()).toEqual(["13 kWh"]);
  expect(context.view.packIndex.value).toBeUndefined();
  expect(buttons()).not.toContain("Remove 13 kWh");
});

it("starts a whole pack in the middle of what the controller works at", () => {
  const { press, job } = page(1);
  press(/^Add the whole pack 1$/);
  expect(job().packs[0].whole).toMatchObject({ energy_kWh: 10, nominal_V: 108 }); // (75 + 140) / 2 = 107.5 V
});
