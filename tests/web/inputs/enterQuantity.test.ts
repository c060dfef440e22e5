import { describe, expect, it } from "vitest";
import { enterQuantity } from "../../../web/inputs/enterQuantity.ts";
import { fieldAt } from "../../../web/inputs/fieldAt.ts";
import { createPaper } from "../../../web/inputs/form.ts";
import type { QuantityFieldSpec } from "../../../web/inputs/quantityField.ts";
import { shownQuantity } from "../../../web/inputs/shownQuantity.ts";
import { atPath } from "../../../web/notebook/atPath.ts";
import { createDesk } from "../../../web/notebook/desk.ts";
import { demoJob } from "../../support/demoJob.ts";

function paperWithDemo() {
  const paper = createPaper(createDesk({ job: demoJob(), drafts: {} }));
  const enter = (path: string, text: string) => enterQuantity(paper, path, fieldAt(path) as QuantityFieldSpec, text);
  return { paper, desk: paper.desk, enter };
}

const load = "vehicle.load_kg";

describe("typed quantity", () => {
  it("takes in what a workshop writes", () => {
    const { desk, enter } = paperWithDemo();
    enter(load, "3 cwt");
    // 3 · 112 lb · 0.45359237 kg/lb, exact
    expect(desk.job.value.vehicle.load_kg).toBeCloseTo(152.407036, 6);
    enter("driveline.finalDrive_ratio", "9/41");
    expect(desk.job.value.driveline.finalDrive_ratio).toBeCloseTo(41 / 9, 12);
    expect(desk.job.value.origins["driveline.finalDrive_ratio"].typed).toBe("9/41");
  });

  it("lets nothing of a half-typed text count once it can no longer be read", () => {
    const { desk, enter } = paperWithDemo();
    const before = desk.job.value.driveline.finalDrive_ratio;
    for (const typed of ["1", "1e", "1e9", "1e99"]) enter("driveline.finalDrive_ratio", typed);
    expect(desk.drafts.value["driveline.finalDrive_ratio"].typed).toBe("1e99");
    expect(desk.job.value.driveline.finalDrive_ratio).toBe(before);
    enter(load, "17");
    desk.settle();
    enter(load, "17 p");
    expect(desk.job.value.vehicle.load_kg).toBe(17);
    desk.undo();
    expect(desk.drafts.value[load]).toBeUndefined();
  });

  it("means by a text that is typed again the very value it stood for", () => {
    const { desk, enter } = paperWithDemo();
    const path = "vehicle.arriving_kg";
    const { arriving_kg } = desk.job.value.vehicle;
    const { typed = "" } = desk.job.value.origins[path];
    expect(typed).toBe("18 3/4 cwt");
    expect(arriving_kg).not.toBeCloseTo(18.75 * 112 * 0.45359237, 6); // the file has it in whole kilograms
    for (const text of ["", "letters", typed.slice(0, -1), typed]) enter(path, text);
    expect(desk.job.value.vehicle.arriving_kg).toBe(arriving_kg);
    expect(desk.drafts.value).toEqual({});
  });

  it("holds nothing at all for allowed where the job allows it", () => {
    const { desk, enter } = paperWithDemo();
    enter(load, "0");
    expect(desk.drafts.value).toEqual({});
    expect(desk.job.value.vehicle.load_kg).toBe(0);
  });

  it("says the bounds of the job, not those of the kind", () => {
    const { desk, enter } = paperWithDemo();
    enter(load, "-40");
    expect(desk.drafts.value[load].problem).toBe("found -40, a mass is 0 to 10000 kg");
  });

  it.each(["", "  ", "?", "unknown"])("puts the usual value in for %j, and calls it so", (text) => {
    const { desk, enter } = paperWithDemo();
    enter(load, text);
    expect(desk.job.value.vehicle.load_kg).toBe(150);
    expect(desk.job.value.origins[load].from).toBe("usual");
    expect(desk.job.value.origins[load]).not.toHaveProperty("typed");
  });

  it("leaves an optional value out where it is unknown", () => {
    const { desk, enter } = paperWithDemo();
    enter("vehicle.gross_kg", "unknown");
    expect(desk.job.value.vehicle).not.toHaveProperty("gross_kg");
  });

  it("keeps an emptied field as a draft where no usual value can stand in", () => {
    const { desk, enter } = paperWithDemo();
    enter("motor.maxSpeed_rpm", "");
    expect(desk.drafts.value["motor.maxSpeed_rpm"].problem).toContain("no usual value");
    expect(desk.job.value.motor.maxSpeed_rpm).toBe(8000);
  });

  it("reads a bare number in the unit shown beside it, and shows it the same way in either habit", () => {
    const { desk, enter } = paperWithDemo();
    desk.editPlain("units", "british", "the units to read in");
    enter("usualDay_km", "40");
    const { usualDay_km, origins } = desk.job.value;
    expect(usualDay_km).toBeCloseTo(64.37376, 5); // 40 miles of 1.609344 km, exact
    const shown = (units: "metric" | "british") =>
      shownQuantity("distance", usualDay_km, origins["usualDay_km"].typed, units);
    expect(shown("british")).toEqual({ text: "40", unit: "miles" });
    expect(shown("metric")).toEqual({ text: "64.3738", unit: "km" });
  });

  it("does not take a number typed in kilometres for miles when the reader's units change", () => {
    const { desk, enter } = paperWithDemo();
    enter("usualDay_km", "40");
    const shown = shownQuantity("distance", 40, desk.job.value.origins["usualDay_km"].typed, "british");
    expect(shown).toEqual({ text: "24.8548", unit: "miles" }); // 40 / 1.609344
  });

  it("keeps plus or minus as a share of the value", () => {
    const { desk, enter } = paperWithDemo();
    enter("vehicle.arriving_kg", "950 +/- 19 kg");
    expect(atPath(desk.job.value, "vehicle.arriving_kg")).toBe(950);
    expect(desk.job.value.origins["vehicle.arriving_kg"].plusMinus_frac).toBeCloseTo(0.02, 12);
  });
});
