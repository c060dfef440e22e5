import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { motors } from "../../../../shared/parts/motors.ts";
import { motorForm, motorPicker } from "../../../../web/forms/motor/motorForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const bare = (change: Partial<Job["motor"]> = {}): Job => {
  const { heat: _heat, rating: _rating, ...motor } = demoJob().motor;
  return { ...demoJob(), motor: { ...motor, ...change } };
};
const points = { kind: "points" as const, speed_rpm: [0, 8000], torque_Nm: [120, 45] };

it("starts a heat limit by the motor's mass", () => {
  const { press, job } = formPage(bare({ mass_kg: 40 }), motorForm);
  press(/^Add the heat limit$/);
  // 0.45 kJ/K and 0.4 W/K of each of its 40 kg.
  expect(job().motor.heat).toMatchObject({ capacity_kJpK: 18, cooling_WpK: 16 });
});

it("starts a rating at a third of the peak power, and at 10 kW where no peak power is known", () => {
  const peak = formPage(bare(), motorForm);
  peak.press(/^Add the maker's rating$/);
  expect(peak.job().motor.rating).toEqual({ continuous_kW: 13 }); // 38 / 3 = 12.7
  const byPoints = formPage(bare({ envelope: points }), motorForm);
  byPoints.press(/^Add the maker's rating$/);
  expect(byPoints.job().motor.rating).toEqual({ continuous_kW: 10 });
});

it("has a table of points only for a motor that is known by points", () => {
  expect(formPage(bare(), motorForm).has("table")).toBe(false);
  expect(formPage(bare({ envelope: points }), motorForm).has("table")).toBe(true);
});

it("warns of a motor for a voltage that the controller does not work at, and of no other", () => {
  // The demo's controller works from 75 to 140 V.
  const fits = motors.find(({ data }) => data.reference_V >= 75 && data.reference_V <= 140);
  const beyond = motors.find(({ data }) => data.reference_V > 140);
  if (!fits || !beyond) throw new Error("no such motors among the parts");
  const { choose, has, said } = formPage(demoJob(), motorPicker);
  choose("#pick-motor", fits.id);
  expect(has(".offer .to-mend")).toBe(false);
  choose("#pick-motor", beyond.id);
  expect(said(".offer .to-mend")).toBe(
    `Its figures hold at ${beyond.data.reference_V} V, and the controller here works from 75 to 140 V: controller and packs must follow.`,
  );
});
