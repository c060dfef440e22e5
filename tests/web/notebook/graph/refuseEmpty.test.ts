import { expect, it } from "vitest";
import { EmptyFields } from "../../../../web/editing/emptied.ts";
import { refuseEmpty } from "../../../../web/notebook/graph/refuseEmpty.ts";

it("waits for a field that is needed and empty, and for no other", () => {
  const needsMass = (path: string) => path === "vehicle.kerb_kg";
  expect(() => refuseEmpty("usualDay_km|vehicle.kerb_kg", needsMass)).toThrow(EmptyFields);
  expect(() => refuseEmpty("usualDay_km", needsMass)).not.toThrow();
  expect(() => refuseEmpty("", () => true)).not.toThrow();
});
