import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import type { UnitHabit } from "../../../../shared/quantity/writeQuantity.ts";
import { rollingLine } from "../../../../sim/plan/going/rollingLine.ts";
import { steadyTable } from "../../../../sim/plan/going/steadyTable.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { bothSides } from "../../../support/calculator.ts";

const tyres = { loadedRadius_mm: 300, rolling_coeff: 0.01, rollingRise_coeff: 0.004, followsTemperature: true };
const physical = { kind: "physical", drag_coeff: 0, frontalArea_m2: 0, wheelDrag_Nm: 0 } as const;
const trailer = { mass_kg: 300, rolling_coeff: 0.02, dragArea_m2: 0 };
const carWith = (vehicle: NonNullable<Changes["vehicle"]>, temperature_degC = 10) =>
  bareJob({ vehicle: { tyres, roadLoad: physical, ...vehicle }, environment: { temperature_degC } });
/** The lines at 50 km/h, which end in the resistance that a run has there. */
function linesOf(job: Job, units: UnitHabit = "metric"): string[] {
  const [row] = steadyTable(job, 0, [50]);
  return rollingLine(job, prepare(job, job.packs[0]).testMass_kg, row, units);
}
const comesOut = (line: string) => {
  const { left, right } = bothSides(line);
  return left[0] <= right[1] && left[1] >= right[0];
};

describe("rolling resistance with its numbers", () => {
  it("has the weight, the coefficient with its rise, and the cold", () => {
    // 1400 kg: 13734 N x (0.01 + 0.004 x 0.25) / (1 - 0.086) = 165.3 N
    expect(linesOf(carWith({ kerb_kg: 1399 }))).toEqual([
      "weight: 1400 kg × 9.81 = 13700 N",
      "(13700 N × (0.01 + 0.004 × (50 km/h / 100 km/h)²)) / (1 + 0.0086 × (10 °C - 20 °C)) = 165 N",
    ]);
  });

  it("leaves out a rise that is none, and a temperature that the tyres do not follow", () => {
    const stiff = { ...tyres, rollingRise_coeff: 0, followsTemperature: false };
    expect(linesOf(carWith({ kerb_kg: 1399, tyres: stiff }))[1]).toBe("(13700 N × (0.01)) = 137 N");
  });

  it("has what a trailer adds by its own coefficient", () => {
    // 2943 N of trailer.
    expect(linesOf(carWith({ kerb_kg: 1399, trailer }))[1]).toContain(" + 2940 N of trailer × 0.02) /");
  });

  it("of a coast-down has its constant by mass and its linear term by speed", () => {
    const roadLoad = { kind: "coastDown", f0_N: 140, f1_Npkmh: 0.5, f2_Npkmh2: 0.04, mass_kg: 1000 } as const;
    // 140 x 1.4 + 0.5 x 50 = 221 N, over 0.914.
    expect(linesOf(carWith({ kerb_kg: 1399, roadLoad }))).toEqual([
      "(140 N × 1.4 of the mass rolled + 0.5 N/(km/h) × 50 km/h) / (1 + 0.0086 × (10 °C - 20 °C)) = 242 N",
    ]);
  });

  it("turns pounds into newtons for a Briton, and leaves them pounds of force for an American", () => {
    // 1400 kg are 3086 lb; 10 degC are 50 degF.
    expect(linesOf(carWith({ kerb_kg: 1399 }), "british")[0]).toBe("weight: 3086 lb × 0.454 × 9.81 = 13700 N");
    const [weight, sum] = linesOf(carWith({ kerb_kg: 1399 }), "american");
    expect(weight).toBe("weight: 3086 lb = 3090 lbf");
    expect(sum).toContain("(1 + 0.0086 × (50 °F - 68 °F) / 1.8)");
  });

  it("comes out on a calculator whatever the units, with a trailer and without", () => {
    let sums = 0;
    for (const units of ["metric", "british", "american"] as const)
      for (const job of [carWith({}), carWith({ trailer }, 30)])
        for (const line of linesOf(job, units)) {
          expect(comesOut(line), line).toBe(true);
          sums++;
        }
    expect(sums).toBe(12);
  });
});
