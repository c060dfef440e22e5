import { describe, expect, it } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { withGear, withGearName, withoutGear } from "../../../../web/forms/motor/gearEdits.ts";
import { demoJob } from "../../../support/demoJob.ts";

const jobEditor = () => createJobEditor({ job: demoJob(), drafts: {} });

describe("gears of the box", () => {
  it("gets one more, called by the next number, its ratio guessed until counted", () => {
    const at = jobEditor();
    expect(at.change("more", withGear)).toEqual([]);
    const { gears } = at.job.value.driveline;
    expect(gears.at(-1)).toEqual({ name: "fifth", gear_ratio: 0.75, efficiency_frac: 0.975 });
    expect(at.job.value.origins["driveline.gears.4.gear_ratio"].from).toBe("guessed");
  });

  it("loses one that is used, with the change into it", () => {
    const at = jobEditor(); // second and third, changed at 32 km/h
    expect(at.change("less", (state) => withoutGear(state, 2))).toEqual([]);
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
      const at = createJobEditor({ job, drafts: {} });
      expect(at.change("less", (state) => withoutGear(state, index))).toEqual([]);
      expect(at.job.value.driveline.shifting).toMatchObject({ kind: "bySpeed", up_kmh });
    }
  });

  it("takes the next gear where the only one used goes", () => {
    const job = demoJob();
    job.driveline.shifting = { kind: "fixed", gear: "third" };
    const at = createJobEditor({ job, drafts: {} });
    expect(at.change("less", (state) => withoutGear(state, 2))).toEqual([]);
    expect(at.job.value.driveline.shifting).toEqual({ kind: "fixed", gear: "fourth" });
  });

  it("carries a new name into the gears used", () => {
    const at = jobEditor();
    expect(at.change("name", (state) => withGearName(state, 2, "top"))).toEqual([]);
    expect(at.job.value.driveline.shifting).toMatchObject({ gears: ["second", "top"] });
  });

  it("refuses a name that another gear has, and leaves the job alone", () => {
    const at = jobEditor();
    const before = at.job.value;
    expect(at.change("name", (state) => withGearName(state, 2, "second"))[0].message).toContain("twice");
    expect(at.job.value).toBe(before);
  });
});
