import { expect, it } from "vitest";
import { EmptyFields, emptiedFields } from "../../../web/editing/emptied.ts";

it("are fields emptied by hand, but the one that is being typed in", () => {
  const drafts = {
    "vehicle.kerb_kg": { typed: " ", problem: "found nothing" },
    "vehicle.load_kg": { typed: "x", problem: "found no number" },
    usualDay_km: { typed: "", problem: "found nothing" },
    "staged.road.speed": { typed: "" },
  };
  expect(emptiedFields(drafts)).toEqual(["vehicle.kerb_kg", "usualDay_km"]);
  expect(emptiedFields(drafts, "usualDay_km")).toEqual(["vehicle.kerb_kg"]);
});

it("are named by their labels to what waits for them", () => {
  expect(new EmptyFields(["vehicle.kerb_kg", "no.such_field"]).message).toMatch(
    /^Waiting for “[^_]+” and “no\.such_field”: empty$/,
  );
});
