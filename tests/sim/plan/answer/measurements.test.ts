import { expect, it } from "vitest";
import { measurementOf } from "../../../../sim/plan/answer/measurements.ts";

it.each([
  ["vehicle.roadLoad.drag_coeff", "coastDown"],
  ["vehicle.tyres.rollingRise_coeff", "coastDown"],
  ["vehicle.tyres.followsTemperature", "coastDown"],
  ["vehicle.kerb_kg", "weighing"],
  ["vehicle.roof.mass_kg", "weighing"],
  ["module.mass_kg", "weighing"],
  ["packs.1.boxes_frac", "weighing"],
  ["module.capacity_Ah", "capacity"],
  ["module.resistance.module_mohm.3", "resistance"],
  ["packs.0.leads_mohm", "resistance"],
  ["vehicle.tyres.loadedRadius_mm", "rollOut"],
  ["driveline.noLoadDrag_Nm", "spinDown"],
  ["driveline.transferBox.frontShaftDrag_Nm", "spinDown"],
  ["accessories.items.0.power_W", "clamp"],
  ["environment.grip_coeff", "grip"],
  ["vehicle.balance.gravityHeight_mm", "grip"],
  ["driveline.gears.0.efficiency_frac", "drive"],
  ["environment.temperature_degC", "drive"],
])("%s is made known by %s", (path, id) => {
  const measurement = measurementOf(path);
  expect(measurement.id).toBe(id);
  expect(measurement.name.length * measurement.subject.length).toBeGreaterThan(0);
});
