import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { unusualFields } from "../../../web/editing/unusual.ts";
import { demoJob } from "../../support/demoJob.ts";

const area = "vehicle.roadLoad.frontalArea_m2";
const drag = "vehicle.roadLoad.drag_coeff";

/** The demo with a value at a path, and what is odd about it. */
function odd(path: string, value: number, units: "metric" | "british" = "metric"): string[] {
  return unusualFields(withPath(demoJob(), path, value), units).map(({ label, message }) => `${label}: ${message}`);
}

it("asks about a frontal area, a drag and a wheel that no car has, and takes them", () => {
  expect(odd(area, 0)).toEqual(["Frontal area: 0 m² is unusual: a car has 1.2 to 5 m²"]);
  expect(odd(area, 13)).toEqual(["Frontal area: 13 m² is unusual: a car has 1.2 to 5 m²"]);
  expect(odd(drag, 0)).toEqual(["Drag coefficient: 0 is unusual: a car has 0.2 to 1.1"]);
  expect(odd("vehicle.tyres.loadedRadius_mm", 600)).toHaveLength(1);
  expect(odd("driveline.gears.1.efficiency_frac", 0.5)).toEqual([
    "Efficiency of a gear: 50 % is unusual: a gear has 85 to 99.5 %",
  ]);
});

it("asks in the reader's units", () => {
  expect(odd(area, 13, "british")).toEqual(["Frontal area: 140 ft² is unusual: a car has 12.9 to 53.8 ft²"]);
  // 282.5 over litres: 3 to 35 of them are 94.2 to 8.07 miles to the gallon.
  const thirsty = withPath(demoJob(), "costs", { ...demoJob().costs, running: { fuel: "petrol", use_l100km: 40 } });
  const [fuel] = unusualFields(thirsty, "british").filter(({ path }) => path.endsWith("use_l100km"));
  expect(fuel?.message).toBe("7.06 mpg is unusual: a road vehicle has 8.07 to 94.2 mpg");
});

it("asks nothing of the demos, nor of what its owner has said is right", () => {
  for (const which of [0, 1, 2]) expect(unusualFields(demoJob(which), "metric")).toEqual([]);
  const sure = withPath(withPath(demoJob(), area, 6), "origins", { [area]: { from: "measured", isConfirmed: true } });
  expect(unusualFields(sure, "metric")).toEqual([]);
});
