import { describe, expect, it } from "vitest";
import { withGear, withGearName, withoutGear } from "../../../web/inputs/gearEdits.ts";
import { createDesk } from "../../../web/notebook/desk.ts";
import { demoJob } from "../../support/demoJob.ts";

const desk = () => createDesk({ job: demoJob(), drafts: {} });

describe("gears of the box", () => {
  it("gets one more, called by the next number, its ratio guessed until counted", () => {
    const at = desk();
    expect(at.change("more", withGear)).toEqual([]);
    const { gears } = at.job.value.driveline;
    expect(gears.at(-1)).toEqual({ name: "fifth", gear_ratio: 0.75, efficiency_frac: 0.975 });
    expect(at.job.value.origins["driveline.gears.4.gear_ratio"].from).toBe("guessed");
  });

  it("loses one that is used, with the change into it", () => {
    const at = desk(); // second and third, changed at 32 km/h
    expect(at.change("less", (sheet) => withoutGear(sheet, 2))).toEqual([]);
    expect(at.job.value.driveline.gears.map(({ name }) => name)).toEqual(["first", "second", "fourth"]);
    expect(at.job.value.driveline.shifting).toEqual({ kind: "fixed", gear: "second" });
  });

  it("keeps as many changes as the gears used ask for, whichever of three goes", () => {
    for (const [index, up_kmh] of [
      [1, [50]],
      [2, [50]],
      [3, [32]],
    ] as const) {
      const job = demoJob();
      job.driveline.shifting = { kind: "bySpeed", gears: ["second", "third", "fourth"], up_kmh: [32, 50] };
      const at = createDesk({ job, drafts: {} });
      expect(at.change("less", (sheet) => withoutGear(sheet, index))).toEqual([]);
      expect(at.job.value.driveline.shifting).toMatchObject({ kind: "bySpeed", up_kmh });
    }
  });

  it("takes the next gear where the only one used goes", () => {
    const job = demoJob();
    job.driveline.shifting = { kind: "fixed", gear: "third" };
    const at = createDesk({ job, drafts: {} });
    expect(at.change("less", (sheet) => withoutGear(sheet, 2))).toEqual([]);
    expect(at.job.value.driveline.shifting).toEqual({ kind: "fixed", gear: "fourth" });
  });

  it("carries a new name into the gears used", () => {
    const at = desk();
    expect(at.change("name", (sheet) => withGearName(sheet, 2, "top"))).toEqual([]);
    expect(at.job.value.driveline.shifting).toMatchObject({ gears: ["second", "top"] });
  });

  it("refuses a name that another gear has, and leaves the job alone", () => {
    const at = desk();
    const before = at.job.value;
    expect(at.change("name", (sheet) => withGearName(sheet, 2, "second"))[0].message).toContain("twice");
    expect(at.job.value).toBe(before);
  });
});
