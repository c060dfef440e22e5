import { expect, it } from "vitest";
import { promisedAndDriven } from "../../../web/charts/promisedAndDriven.ts";
import { drawing } from "../../support/drawing.ts";

/** An hour a second apart at steady powers: as many watt-hours. */
const steady = (power_W: number) => new Float64Array(3601).fill(power_W);
const lines = {
  time_s: Float64Array.from({ length: 3601 }, (_, i) => i),
  speed_mps: steady(10),
  measured_W: steady(1100),
  predicted_W: steady(1000),
  corrected_W: steady(1090),
};

it("says the energy drawn over the drive as logged, predicted and corrected", () => {
  expect(promisedAndDriven(lines, drawing()).alt).toMatch(
    /: 1\.1.kWh logged, 1.kWh predicted, 1\.09.kWh as corrected\.$/,
  );
});

it("says that nothing was driven", () => {
  const none = Object.fromEntries(
    Object.keys(lines).map((key) => [key, new Float64Array(0)]),
  ) as unknown as typeof lines;
  expect(promisedAndDriven(none, drawing()).alt).toMatch(/Nothing was driven in this log/);
});
