import { html } from "lit-html";
import { expect, it } from "vitest";
import { optionalGroup, usualOf, usualOrigins } from "../../../web/fields/optionalGroup.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const path = "motor.rating";
const page = (continuous_kW = 12) =>
  formPage(demoJob(), (form) =>
    optionalGroup(
      form,
      { path, name: "maker's rating", without: "Judged by heat.", start: () => ({ continuous_kW }) },
      () => html`<b>fields</b>`,
    ),
  );

it("has a sentence in the place of a group that is not there, and fields once it is added; both ways are one step", () => {
  const { press, job, said, jobEditor } = page();
  expect(said("fieldset")).toContain("Maker's rating Judged by heat.");
  expect(said()).not.toContain("fields");
  press(/^Add the maker's rating$/);
  expect(job().motor.rating).toEqual({ continuous_kW: 12 });
  expect(job().origins["motor.rating.continuous_kW"]).toEqual({ from: "usual" });
  expect(said()).toContain("fields");
  expect(said()).not.toContain("Judged by heat.");
  press(/^Remove the maker's rating$/);
  expect(job()).toEqual(demoJob());
  jobEditor.undo();
  expect(job().motor.rating).toEqual({ continuous_kW: 12 });
});

it("says why where the job does not take what the group would start with", () => {
  const { press, job, said } = page(-1);
  press(/^Add/);
  expect(job().motor.rating).toBeUndefined();
  expect(said(".refused")).toMatch(/^Not done: /);
});

it("calls usual the numbers of a group and of its lists, and nothing that is chosen, is no number or has no field", () => {
  const given = { speed_rpm: [0, 3000], torque_Nm: [100, 80], kind: "points", strange_kW: 3 };
  expect(Object.keys(usualOrigins("motor.envelope", given)).sort()).toEqual([
    "speed_rpm.0",
    "speed_rpm.1",
    "torque_Nm.0",
    "torque_Nm.1",
  ]);
  // How many modules a pack has is decided by the workshop: nobody asks where that comes from.
  expect(usualOrigins("packs.0", { seriesModules: 5, name: "small" })).toEqual({});
});

it("knows the usual value of a field, and none of a field without one", () => {
  expect(usualOf("vehicle.load_kg")).toBe(150); // two people of 75 kg, as the field itself says
  expect(usualOf("vehicle.gross_kg")).toBe(0);
  expect(usualOf("no.such.path")).toBe(0);
});
