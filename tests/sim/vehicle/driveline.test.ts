import { expect, it } from "vitest";
import { prepareDriveline } from "../../../sim/vehicle/driveline.ts";
import { demoJob } from "../../support/demoJob.ts";

/** The demo's gears with something of its driveline changed. */
function gearsWith(change: object) {
  const job = demoJob();
  return prepareDriveline({ ...job, driveline: { ...job.driveline, ...change } }).gears;
}

const box = {
  high_ratio: 1.2,
  highEfficiency_frac: 0.97,
  low_ratio: 2.4,
  lowEfficiency_frac: 0.94,
  range: "high",
  isFrontEngaged: true,
  hubs: "locked",
  frontShaftDrag_Nm: 6,
  frontEfficiency_frac: 0.9,
};

it("has two propeller shafts and four half-shafts share the torque where both axles drive, one and two where one does", () => {
  const limited = (limits: object, transferBox?: object) => {
    const [gear] = gearsWith({ limits, transferBox, wholeEfficiency_frac: 1, noLoadDrag_Nm: 0 });
    const { finalDrive_ratio } = demoJob().driveline;
    const overall_ratio = gear.motor_radpm * (demoJob().vehicle.tyres.loadedRadius_mm / 1000);
    return { shaft_Nm: (gear.drive_Nm * overall_ratio) / finalDrive_ratio, half_Nm: gear.drive_Nm * overall_ratio };
  };
  expect(limited({ propellerShaft_Nm: 270 }).shaft_Nm).toBeCloseTo(270, 9);
  expect(limited({ propellerShaft_Nm: 270 }, box).shaft_Nm).toBeCloseTo(540, 9);
  expect(limited({ halfShaft_Nm: 600 }).half_Nm).toBeCloseTo(1200, 9);
  expect(limited({ halfShaft_Nm: 600 }, box).half_Nm).toBeCloseTo(2400, 9);
});

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
