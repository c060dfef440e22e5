import { describe, expect, it } from "vitest";
import { atPath } from "../../../shared/job/path.ts";
import { emptiedFields } from "../../../web/editing/emptied.ts";
import { fieldAt } from "../../../web/editing/fieldTable/fieldAt.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { enterQuantity } from "../../../web/fields/enterQuantity.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import type { QuantityFieldSpec } from "../../../web/fields/quantityField.ts";
import { shownQuantity } from "../../../web/fields/shownQuantity.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

function paperWithDemo() {
  const context = createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads);
  const enter = (path: string, text: string) => enterQuantity(context, path, fieldAt(path) as QuantityFieldSpec, text);
  return { context, jobEditor: context.jobEditor, enter };
}

const load = "vehicle.load_kg";

describe("typed quantity", () => {
  it("takes in what a workshop writes", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter(load, "3 cwt");
    // 3 · 112 lb · 0.45359237 kg/lb, exact
    expect(jobEditor.job.value.vehicle.load_kg).toBeCloseTo(152.407036, 6);
    enter("driveline.finalDrive_ratio", "9/41");
    expect(jobEditor.job.value.driveline.finalDrive_ratio).toBeCloseTo(41 / 9, 12);
    expect(jobEditor.job.value.origins["driveline.finalDrive_ratio"].typed).toBe("9/41");
  });

  it("keeps a band up to twice the value, and refuses a wider one with the value of before", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter(load, "100 ± 200 kg");
    expect(jobEditor.job.value.origins[load].plusMinus_frac).toBe(2);
    jobEditor.settle();
    enter(load, "150 ± 450 kg");
    expect(jobEditor.drafts.value[load].problem).toBe(
      "found a band of 3 times the value to either side, at most 2 times it allowed",
    );
    expect(jobEditor.job.value.vehicle.load_kg).toBe(100);
  });

  it("lets nothing of a half-typed text count once it can no longer be read", () => {
    const { jobEditor, enter } = paperWithDemo();
    const before = jobEditor.job.value.driveline.finalDrive_ratio;
    for (const typed of ["1", "1e", "1e9", "1e99"]) enter("driveline.finalDrive_ratio", typed);
    expect(jobEditor.drafts.value["driveline.finalDrive_ratio"].typed).toBe("1e99");
    expect(jobEditor.job.value.driveline.finalDrive_ratio).toBe(before);
    enter(load, "17");
    jobEditor.settle();
    enter(load, "17 p");
    expect(jobEditor.job.value.vehicle.load_kg).toBe(17);
    jobEditor.undo();
    expect(jobEditor.drafts.value[load]).toBeUndefined();
  });

  it("means by a text that is typed again the very value it stood for", () => {
    const { jobEditor, enter } = paperWithDemo();
    const path = "vehicle.kerb_kg";
    const { kerb_kg } = jobEditor.job.value.vehicle;
    const { typed = "" } = jobEditor.job.value.origins[path];
    expect(typed).toBe("18 3/4 cwt");
    expect(kerb_kg).not.toBeCloseTo(18.75 * 112 * 0.45359237, 6); // the file has it in whole kilograms
    for (const text of ["", "letters", typed.slice(0, -1), typed]) enter(path, text);
    expect(jobEditor.job.value.vehicle.kerb_kg).toBe(kerb_kg);
    expect(jobEditor.drafts.value).toEqual({});
  });

  it("holds nothing at all for allowed where the job allows it", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter(load, "0");
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.job.value.vehicle.load_kg).toBe(0);
  });

  it("says the bounds of the job, not those of the kind", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter(load, "-40");
    expect(jobEditor.drafts.value[load].problem).toBe("-40 kg is not possible (0 to 10000 kg)");
  });

  it.each(["", "  "])("keeps a field emptied by %j empty: no usual value stands in unasked", (text) => {
    const { context, jobEditor, enter } = paperWithDemo();
    const before = jobEditor.job.value;
    enter("vehicle.tyres.loadedRadius_mm", text);
    expect(jobEditor.job.value).toBe(before);
    expect(emptiedFields(jobEditor.drafts.value)).toEqual(["vehicle.tyres.loadedRadius_mm"]);
    expect(emptiedFields(jobEditor.drafts.value, context.typing.value?.path)).toEqual([]); // not while it is typed in
    enter("vehicle.tyres.loadedRadius_mm", "285");
    expect(emptiedFields(jobEditor.drafts.value)).toEqual([]);
  });

  it("keeps a band as the middle with the band in its origin", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter("vehicle.roadLoad.drag_coeff", "0.40 to 0.60");
    expect(atPath(jobEditor.job.value, "vehicle.roadLoad.drag_coeff")).toBeCloseTo(0.5, 12);
    const { typed, plusMinus_frac } = jobEditor.job.value.origins["vehicle.roadLoad.drag_coeff"];
    expect(typed).toBe("0.40 to 0.60");
    expect(plusMinus_frac).toBeCloseTo(0.2, 12);
  });

  it.each(["?", "unknown"])("puts the usual value in for %j, and calls it so", (text) => {
    const { jobEditor, enter } = paperWithDemo();
    enter(load, text);
    expect(jobEditor.job.value.vehicle.load_kg).toBe(150);
    expect(jobEditor.job.value.origins[load].from).toBe("usual");
    expect(jobEditor.job.value.origins[load]).not.toHaveProperty("typed");
  });

  it("leaves an optional value out where it is unknown", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter("vehicle.gross_kg", "unknown");
    expect(jobEditor.job.value.vehicle).not.toHaveProperty("gross_kg");
  });

  it("keeps “unknown” as a draft where no usual value can stand in", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter("motor.maxSpeed_rpm", "unknown");
    expect(jobEditor.drafts.value["motor.maxSpeed_rpm"].problem).toContain("no usual value");
    expect(jobEditor.job.value.motor.maxSpeed_rpm).toBe(8000);
  });

  it("reads a bare number in the unit shown beside it, and shows it the same way in either habit", () => {
    const { jobEditor, enter } = paperWithDemo();
    jobEditor.editPlain("units", "british", "the units to read in");
    enter("usualDay_km", "40");
    const { usualDay_km, origins } = jobEditor.job.value;
    expect(usualDay_km).toBeCloseTo(64.37376, 5); // 40 miles of 1.609344 km, exact
    const shown = (units: "metric" | "british") =>
      shownQuantity("distance", usualDay_km, origins["usualDay_km"].typed, units);
    expect(shown("british")).toEqual({ text: "40", unit: "miles" });
    expect(shown("metric")).toEqual({ text: "64.3738", unit: "km" });
  });

  it("does not take a number typed in kilometres for miles when the reader's units change", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter("usualDay_km", "40");
    const shown = shownQuantity("distance", 40, jobEditor.job.value.origins["usualDay_km"].typed, "british");
    expect(shown).toEqual({ text: "24.8548", unit: "miles" }); // 40 / 1.609344
  });

  it("keeps plus or minus as a share of the value", () => {
    const { jobEditor, enter } = paperWithDemo();
    enter("vehicle.kerb_kg", "950 +/- 19 kg");
    expect(atPath(jobEditor.job.value, "vehicle.kerb_kg")).toBe(950);
    expect(jobEditor.job.value.origins["vehicle.kerb_kg"].plusMinus_frac).toBeCloseTo(0.02, 12);
  });
});
