import { expect, it } from "vitest";
import { torqueTable } from "../../../../web/forms/motor/torqueTable.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

function page(speed_rpm: number[], torque_Nm: number[]) {
  const job = { ...demoJob(), engine: { curve: { speed_rpm, torque_Nm } } };
  const shown = formPage(job, (form) => torqueTable(form, { path: "engine.curve", caption: "Torque.", most: 4 }));
  return { ...shown, curve: () => shown.job().engine?.curve };
}

it("adds a point as far on as the last two lie apart, at the torque of the last", () => {
  const { press, curve } = page([1000, 2500], [80, 100]);
  press(/^Add a point$/);
  expect(curve()).toEqual({ speed_rpm: [1000, 2500, 4000], torque_Nm: [80, 100, 100] });
});

it("removes a point from both lists, and keeps two", () => {
  const { press, curve, buttons } = page([1000, 2500, 4000], [80, 100, 70]);
  press(/^Remove point 2$/);
  expect(curve()).toEqual({ speed_rpm: [1000, 4000], torque_Nm: [80, 70] });
  expect(buttons()).toEqual(["Add a point"]);
});

it("has no room beyond the most", () => {
  const { buttons, said } = page([1000, 2000, 3000, 4000], [80, 100, 90, 70]);
  expect(buttons()).not.toContain("Add a point");
  expect(said(".buttons")).toBe("4 at most.");
});
