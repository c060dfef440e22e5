import { expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { stagedTexts, withoutStaged, withStaged } from "../../../web/editing/stagedTexts.ts";
import { inventedJob } from "../../support/inventedJob.ts";

it("are read and written whole, each place its own, and undone", () => {
  const jobEditor = createJobEditor({ job: inventedJob(), drafts: {} });
  const [sheet, road] = ["datasheet", "road"].map((place) => stagedTexts(jobEditor, place, place));
  sheet.value = { torque: "120 Nm", power: "" };
  road.value = { speed: "50" };
  expect(sheet.value).toEqual({ torque: "120 Nm", power: "" });
  expect(road.value).toEqual({ speed: "50" });
  jobEditor.undo();
  expect(road.value).toEqual({});
  expect(sheet.value).toEqual({ torque: "120 Nm", power: "" });
});

it("go from the state once they are in the job, others staying", () => {
  const state = withStaged({ job: inventedJob(), drafts: { "vehicle.kerb_kg": { typed: "x" } } }, "staged.road.", {
    speed: "50",
  });
  expect(Object.keys(state.drafts)).toEqual(["vehicle.kerb_kg", "staged.road.speed"]);
  expect(Object.keys(withoutStaged(state, "road").drafts)).toEqual(["vehicle.kerb_kg"]);
});
