import { expect, it } from "vitest";
import { accessories } from "../../../shared/parts/accessories.ts";

const part = (id: string) => {
  const found = accessories.find((accessory) => accessory.id === id);
  if (!found) throw new Error(`no accessory ${id}`);
  return found;
};

// Common practice, no source, in watts.
it.each([
  ["demister", 150, 400],
  ["vacuum-pump", 60, 100],
  ["heater-small", 1000, 2000],
  ["heater-large", 2000, 4000],
])("%s draws %f to %f W", (id, low_W, high_W) => {
  const { low, high } = part(id).origins["power_W"];
  expect(low).toBeGreaterThanOrEqual(low_W);
  expect(high).toBeLessThanOrEqual(high_W);
});

it("lights, wipers and blower together draw 150 to 300 W", () => {
  const sum_W = ["lights", "wipers", "blower"].reduce((sum, id) => sum + part(id).data.power_W, 0);
  expect(sum_W).toBeGreaterThan(150);
  expect(sum_W).toBeLessThan(300);
});

it("heat comes from the pack, not over the DC-DC converter", () => {
  for (const id of ["heater-small", "heater-large"]) expect(part(id).data.supply).toBe("pack");
});

it("each draws something as soon as it is added", () => {
  for (const { id, data } of accessories) expect([id, data.power_W * data.duty_frac > 0]).toEqual([id, true]);
});
