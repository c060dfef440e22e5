import { describe, expect, it } from "vitest";
import { heaters, usualWinter } from "../../../../shared/parts/heaters.ts";
import { readQuantity } from "../../../../shared/quantity.ts";
import { allowedRange } from "../../../../web/editing/fieldTable/allowedRange.ts";
import { fieldAt, labelOf } from "../../../../web/editing/fieldTable/fieldAt.ts";
import { fieldList } from "../../../../web/editing/fieldTable/fieldList.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob();
const quantities = Object.entries(fieldList).filter(([, field]) => field.type === "quantity");
const usual = quantities.flatMap(([path, field]) =>
  field.type === "quantity" && field.usual ? [[path, field.kind, field.usual.value] as const] : [],
);
/** The path with a place put in for every list, and a job that has what the path speaks of. */
const placed = (path: string) => path.replaceAll("*", "0");
const coastDown = {
  ...job,
  vehicle: {
    ...job.vehicle,
    roadLoad: { kind: "coastDown" as const, f0_N: 120, f1_Npkmh: 1, f2_Npkmh2: 0.04, mass_kg: 1000 },
  },
};
const dragArea = {
  ...job,
  vehicle: { ...job.vehicle, roadLoad: { kind: "dragArea" as const, dragArea_m2: 0.8, wheelDrag_Nm: 0 } },
};
const massFactor = { ...job, vehicle: { ...job.vehicle, inertia: { kind: "massFactor" as const, mass_ratio: 1.03 } } };
const points = {
  ...job,
  motor: { ...job.motor, envelope: { kind: "points" as const, speed_rpm: [0, 8000], torque_Nm: [120, 40] } },
};
const flat = { ...job, motor: { ...job.motor, loss: { kind: "flat" as const, efficiency_frac: 0.85 } } };
const burner = heaters.find(({ id }) => id === "fuel") ?? heaters[0];
const winter = usualWinter(burner.heat);
const burns = {
  ...job,
  conditions: { winter, old: { resistance_ratio: 1.3 }, others: [{ ...winter, name: "as winter", isOld: false }] },
};
const alternatives = [job, coastDown, dragArea, massFactor, points, flat, burns];

describe("fields of the page", () => {
  it.each(quantities)("%s has bounds in the schema of the job", (path) => {
    const ranges = alternatives.map((each) => allowedRange(each, placed(path)));
    expect(ranges.some((range) => range !== undefined && range.min < range.max)).toBe(true);
  });

  it.each(usual)("%s has its usual value within its bounds and readable as typed", (path, kind, value) => {
    const range = alternatives.map((each) => allowedRange(each, placed(path))).find((each) => each !== undefined);
    expect(value).toBeGreaterThanOrEqual(range?.min ?? Number.POSITIVE_INFINITY);
    expect(value).toBeLessThanOrEqual(range?.max ?? Number.NEGATIVE_INFINITY);
    const reading = readQuantity(kind, String(value), { min: range?.min, max: range?.max });
    expect(reading).toMatchObject({ ok: true, value });
  });

  it("calls a path by its field's label and place in a list", () => {
    expect(labelOf("packs.2.floor_frac")).toBe("Discharge to, no. 3");
    expect(labelOf("vehicle.load_kg")).toBe("People and luggage");
    expect(labelOf("somewhere.else")).toBe("somewhere.else");
  });

  it("throws for a path without a field, since that is our mistake", () => {
    expect(() => fieldAt("vehicle.horn")).toThrow("no field for vehicle.horn");
  });
});
