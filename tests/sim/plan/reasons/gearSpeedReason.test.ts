import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { type UnitHabit, writeQuantity } from "../../../../shared/quantity/writeQuantity.ts";
import { gearSpeedReason } from "../../../../sim/plan/reasons/gearSpeedReason.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
const inUnits = (units: UnitHabit, changes: Partial<Job["driveline"]> = {}) =>
  gearSpeedReason(
    { ...job, driveline: { ...job.driveline, ...changes } },
    (kind, value, digits) => writeQuantity(kind, value, units, digits),
    units,
  );

describe("the speed at the motor's top speed", () => {
  it("goes by turns of the wheel a kilometre", () => {
    // 1 000 000 / (2 pi 290) = 548.8; 8000 x 60 / (1.4 x 4.2 x 548.8) = 148.7 km/h
    expect(inUnits("metric")).toEqual({
      value: "149 km/h in 3 at the motor's top speed",
      lines: [
        "turns of the wheel: 1000 × 1000 / (2 × 3.14 × 290 mm) = 549 a kilometre",
        "8000 rpm × 60 / (1.4 × 1 × 4.2 × 549) = 149 km/h",
      ],
      isOfEveryPack: true,
    });
  });

  it("goes by turns of the wheel a mile for whoever reads miles", () => {
    // 63 360 in / (2 pi 11.417 in) = 883.2; 8000 x 60 / (5.88 x 883.2) = 92.4 mph
    expect(inUnits("british").lines).toEqual([
      "turns of the wheel: 1760 × 36 / (2 × 3.14 × 11.4 in) = 883 a mile",
      "8000 rpm × 60 / (1.4 × 1 × 4.2 × 883) = 92.4 mph",
    ]);
  });

  it("is that of the last gear where gears are changed", () => {
    const { value, lines } = inUnits("metric", { shifting: { kind: "bySpeed", gears: ["3", "4"], up_kmh: [60] } });
    // 148.7 x 1.4 = 208.2
    expect(value).toBe("208 km/h in 4 at the motor's top speed");
    expect(lines[1]).toContain("(1 × 1 × 4.2 × 549)");
  });

  it("goes through the transfer box in the range it is in", () => {
    const transferBox = {
      high_ratio: 1,
      highEfficiency_frac: 1,
      low_ratio: 2,
      lowEfficiency_frac: 1,
      range: "low" as const,
      isFrontEngaged: false,
      hubs: "free" as const,
      frontShaftDrag_Nm: 0,
      frontEfficiency_frac: 1,
    };
    expect(inUnits("metric", { transferBox }).lines[1]).toBe("8000 rpm × 60 / (1.4 × 2 × 4.2 × 549) = 74.4 km/h");
  });
});
