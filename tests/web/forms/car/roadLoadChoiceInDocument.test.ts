import { expect, it } from "vitest";
import { roadLoadChoice } from "../../../../web/forms/car/roadLoadChoice.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const kind = "#field-road-load-kind";

it("makes one drag area of the body's two figures, and keeps the drag of the wheels", () => {
  const { choose, job, has } = formPage(demoJob(), roadLoadChoice);
  choose(kind, "dragArea");
  // The saloon's 0.45 × 1.78 m² = 0.801 m².
  expect(job().vehicle.roadLoad).toEqual({ kind: "dragArea", dragArea_m2: 0.801, wheelDrag_Nm: 4 });
  expect(has("#field-vehicle-roadLoad-dragArea_m2")).toBe(true);
  expect(has("#field-vehicle-roadLoad-drag_coeff")).toBe(false);
});

it("starts a coast-down for the car as it is laden now", () => {
  const { choose, job } = formPage(demoJob(), roadLoadChoice);
  choose(kind, "coastDown");
  // 952.544 kg and 110 kg of load; 0.13 N a kilogram of 1062.5 kg is 138 N.
  expect(job().vehicle.roadLoad).toEqual({
    kind: "coastDown",
    f0_N: 138,
    f1_Npkmh: 0.5,
    f2_Npkmh2: 0.037,
    mass_kg: 952.544 + 110,
  });
});

it("takes usual figures where the coast-down before says nothing of body and tyres", () => {
  const { choose, job } = formPage(demoJob(1), roadLoadChoice);
  expect(job().vehicle.roadLoad.kind).toBe("coastDown");
  choose(kind, "physical");
  const { roadLoad } = job().vehicle;
  if (roadLoad.kind !== "physical") throw new Error(roadLoad.kind);
  // A car's drag coefficient and frontal area: common practice, no source.
  expect(roadLoad.drag_coeff).toBeGreaterThan(0.25);
  expect(roadLoad.drag_coeff).toBeLessThan(0.7);
  expect(roadLoad.frontalArea_m2).toBeGreaterThan(1.2);
});

it("drops what waited in the fields of the way before, and no other text", () => {
  const drafts = {
    "vehicle.roadLoad.drag_coeff": { typed: "x", problem: "y" },
    "vehicle.name": { typed: "z", problem: "y" },
  };
  const { choose, jobEditor } = formPage({ job: demoJob(), drafts }, roadLoadChoice);
  choose(kind, "dragArea");
  expect(Object.keys(jobEditor.drafts.value)).toEqual(["vehicle.name"]);
});
