import { describe, expect, it } from "vitest";
import { atPath } from "../../../shared/job/path.ts";
import { page } from "./slipPage.ts";

const third = "driveline.gears.2.gear_ratio";

describe("a slip of the pencil", () => {
  it.each([
    ["teeth upside down", third, "14/20", "9/41", /likely 41\/9 = 4\.56/],
    ["a ratio without its point", third, "1.4", "342", /likely 3\.42/],
    ["a ratio in percent", third, "1.4", "342 %", /% is no unit for a gear ratio/],
    ["a share as an efficiency above 1", "driveline.finalDriveEfficiency_frac", "95", "1.2", /1\.2/],
    ["an efficiency above 100 %", "charger.efficiency_frac", "90", "104 %", /104 %.*to 100 %/],
    ["300 degrees of air", "environment.temperature_degC", "20", "300 degC", /-40 to 55 °C/],
    ["a module that stands no current", "module.discharge.continuous_A", "76", "", /module without current limits/],
    ["a module whose limit nobody knows", "module.charge.peak_A", "76", "unknown", /module without current limits/],
    ["an air pressure in mbar", "environment.pressure_kPa", "101", "1013", /likely 1013 mbar/],
    ["a wheelbase in metres", "vehicle.balance.wheelbase_mm", "2490", "2.49", /likely 2\.49 m/],
    ["degrees for a share", "driveline.gears.0.efficiency_frac", "95", "8 deg", /8 deg/],
  ])("%s is refused at the field, kept there, and the job goes on", (_, path, good, slip, sentence) => {
    const { jobEditor, enter } = page();
    enter(path, good);
    jobEditor.settle(); // the field was left, and the good value is what stands
    const before = atPath(jobEditor.job.value, path);
    expect(jobEditor.drafts.value).toEqual({});
    enter(path, slip);
    expect(jobEditor.drafts.value[path]?.typed).toBe(slip);
    expect(jobEditor.drafts.value[path]?.problem).toMatch(sentence);
    expect(atPath(jobEditor.job.value, path)).toBe(before);
  });

  it("asks which hundredweight is meant", () => {
    const reading = page().read("vehicle.kerb_kg", "14 1/4 cwt");
    expect(reading && "question" in reading && reading.question?.id).toBe("cwt");
  });

  it("turns a final drive over and says so", () => {
    const { jobEditor, enter, read } = page();
    enter("driveline.finalDrive_ratio", "9/41");
    expect(jobEditor.job.value.driveline.finalDrive_ratio).toBeCloseTo(41 / 9, 12);
    expect(read("driveline.finalDrive_ratio", "9/41")).toMatchObject({
      notes: [expect.stringContaining("turned over")],
    });
  });

  it("says the rule that makes a radius of a tyre's marking", () => {
    const { jobEditor, enter, read } = page();
    enter("vehicle.tyres.loadedRadius_mm", "165 R 13");
    // 13 in rim, 82 % of 165 mm twice: 600.8 mm free, 3 % less under load, half of it
    expect(jobEditor.job.value.vehicle.tyres.loadedRadius_mm).toBeCloseTo((0.97 * (330.2 + 2 * 0.82 * 165)) / 2, 6);
    expect(read("vehicle.tyres.loadedRadius_mm", "165 R 13")).toMatchObject({
      notes: [expect.stringContaining("rule of thumb")],
    });
  });

  it("says that the old engine's speed and torque were changed over", () => {
    const { jobEditor, enter } = page();
    for (const key of Object.keys(jobEditor.job.value.engine ?? {})) enter(`engine.${key}`, "");
    enter("engine.ratedTorque_Nm", "2400");
    enter("engine.torque_rpm", "115");
    expect(jobEditor.drafts.value["engine.torque_rpm"].problem).toContain("likely changed over: 115 Nm at 2400 rpm");
  });

  it("lets two figures that were changed over be put right one after the other", () => {
    const { jobEditor, enter } = page();
    for (const key of Object.keys(jobEditor.job.value.engine ?? {})) enter(`engine.${key}`, "");
    enter("engine.ratedTorque_Nm", "2400");
    enter("engine.torque_rpm", "115");
    enter("engine.ratedTorque_Nm", "115");
    enter("engine.torque_rpm", "2400");
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.job.value.engine).toEqual({ ratedTorque_Nm: 115, torque_rpm: 2400 });
  });
});
