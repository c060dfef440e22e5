import { expect, it } from "vitest";
import { prepareDriveline } from "../../../sim/vehicle/driveline.ts";
import { demoJob } from "../../support/demoJob.ts";

/** The demo's gears with something of its driveline changed. */
function gearsWith(change: object) {
  const job = demoJob();
  return prepareDriveline({ ...job, driveline: { ...job.driveline, ...change } }).gears;
}

it("loses in each gear what its meshes lose", () => {
  const { gears, finalDriveEfficiency_frac } = demoJob().driveline;
  for (const { name, efficiency_frac } of gearsWith({})) {
    const gear = gears.find((each) => each.name === name);
    expect(efficiency_frac).toBeCloseTo((gear?.efficiency_frac ?? 0) * finalDriveEfficiency_frac, 12);
  }
});

it("loses the same in every gear where one efficiency is given for all, whatever those of the meshes are", () => {
  for (const { efficiency_frac } of gearsWith({ wholeEfficiency_frac: 0.86, finalDriveEfficiency_frac: 0.5 })) {
    expect(efficiency_frac).toBe(0.86);
  }
});
