import { expect, it } from "vitest";
import { heldDoings } from "../../../../sim/plan/measured/heldDoings.ts";
import type { Observations } from "../../../../sim/plan/measured/observations.ts";

const segments = ["standing", "braking", "standing", "cruising"].map((doing) => ({ doing }));
const observations = {
  segments,
  time_s: Float64Array.of(10, 20, 30, 0),
  energy_J: Float64Array.of(3600, -7200, 1800, 900),
} as unknown as Observations;

it("sums each of what the car did over its segments, in watt-hours, and leaves out what it did for no time", () => {
  expect(heldDoings(observations, [360, -3600, 720, 1], [36, -360, 72, 1])).toEqual([
    { doing: "standing", time_s: 40, measured_Wh: 1.5, predicted_Wh: 0.3, corrected_Wh: 0.03 },
    { doing: "braking", time_s: 20, measured_Wh: -2, predicted_Wh: -1, corrected_Wh: -0.1 },
  ]);
});
