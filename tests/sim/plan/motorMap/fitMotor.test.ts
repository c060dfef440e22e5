import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { RADPS_PER_RPM } from "../../../../shared/units.ts";
import { fourTermLoss_W } from "../../../../sim/motor/loss.ts";
import { type Datasheet, fitDatasheet } from "../../../../sim/plan/motorMap/fitMotor.ts";

// The 100 kW induction machine of the textbook. [LarminieLowry2012, eq. 8.25]
const law = { copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 };
const sheet: Datasheet = {
  kind: "induction",
  peakTorque_Nm: 140,
  peakPower_kW: 102,
  continuousPower_kW: 50,
  topSpeed_rpm: 12_000,
  rated_V: 300,
  points: [],
};

function point(speed_rpm: number, torque_Nm: number) {
  const shaft_W = torque_Nm * speed_rpm * RADPS_PER_RPM;
  return {
    speed_rpm,
    torque_Nm,
    efficiency_frac: shaft_W / (shaft_W + fourTermLoss_W(law, torque_Nm, speed_rpm * RADPS_PER_RPM)),
  };
}

function problemsOf(wrong: Partial<Datasheet>) {
  try {
    fitDatasheet({ ...sheet, ...wrong });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error(`fitted without complaint: ${JSON.stringify(wrong)}`);
}

describe("a motor from its datasheet", () => {
  it("meets one or two points to a tenth of a percentage point and says what is assumed", () => {
    for (const points of [[point(4000, 60)], [point(4000, 60), point(8000, 30)]]) {
      const motor = fitDatasheet({ ...sheet, points });
      for (const residual of motor.residuals)
        expect(Math.abs(residual.fitted_frac - residual.efficiency_frac)).toBeLessThan(0.001);
      expect(motor.residuals.length).toBe(points.length);
      expect(motor.notes.join()).toContain("assumed");
    }
  });

  it("keeps all four terms with a single point: no free idling, no free standing torque", () => {
    const { law: found } = fitDatasheet({ ...sheet, points: [point(4000, 60)] });
    for (const coeff of Object.values(found)) expect(coeff).toBeGreaterThan(0);
  });

  it("finds the textbook's losses again from nine of its points", () => {
    const points = [1500, 4000, 9000].flatMap((rpm) => [10, 40, 100].map((torque) => point(rpm, torque)));
    const motor = fitDatasheet({ ...sheet, points });
    expect(motor.notes.join()).not.toContain("assumed");
    let compared = 0;
    for (const rpm of [1500, 3000, 6000, 9000]) {
      for (const torque of [5, 20, 60, 120]) {
        const speed = rpm * RADPS_PER_RPM;
        compared++;
        // 1 %: what the weak pull towards the usual split costs
        expect(
          Math.abs(fourTermLoss_W(motor.law, torque, speed) / fourTermLoss_W(law, torque, speed) - 1),
        ).toBeLessThan(0.01);
      }
    }
    expect(compared).toBe(16);
  });

  it("has the envelope of peak torque and power, base speed where they meet", () => {
    const motor = fitDatasheet(sheet);
    expect(motor.envelope).toEqual({ kind: "peak", torque_Nm: 140, power_kW: 102 });
    expect(motor.baseSpeed_rpm * RADPS_PER_RPM).toBeCloseTo(102_000 / 140, 9);
    expect(motor.notes.join()).toContain("no efficiency point");
  });

  it("without a point is as efficient at continuous power as the classes of its kind", () => {
    const { law: found, continuousLoss_W } = fitDatasheet(sheet);
    const base_radps = 102_000 / 140;
    const loss_W = fourTermLoss_W(found, 50_000 / base_radps, base_radps);
    expect(continuousLoss_W).toBe(loss_W);
    // Motor of IE2 to IE3 at 50 kW, 0.933 to 0.944 [IEC60034-30-1, from memory], behind a controller of 0.96 to 0.98.
    expect(50_000 / (50_000 + loss_W)).toBeGreaterThan(0.933 * 0.96);
    expect(50_000 / (50_000 + loss_W)).toBeLessThan(0.944 * 0.98);
    const magnets = fitDatasheet({ ...sheet, kind: "interiorMagnet" });
    expect(magnets.continuousLoss_W).toBeLessThan(0.8 * loss_W);
  });

  it("shows how far it misses points that contradict each other", () => {
    const points = [
      { ...point(4000, 60), efficiency_frac: 0.95 },
      { ...point(4000, 60), efficiency_frac: 0.75 },
    ];
    const { residuals, notes } = fitDatasheet({ ...sheet, points });
    expect(
      Math.max(...residuals.map((residual) => Math.abs(residual.fitted_frac - residual.efficiency_frac))),
    ).toBeGreaterThan(0.05);
    expect(notes[0]).toMatch(/meets the 2 points to \d+(\.\d+)? percentage points/);
  });
});

describe("datasheets refused", () => {
  it.each<[string, Partial<Datasheet>, RegExp]>([
    [
      "sheet-efficiency",
      { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 92 }] },
      /found 92, .*likely 0.92/,
    ],
    [
      "sheet-efficiency",
      { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 1.1 }] },
      /found 1.1, above 0 and below 1 wanted$/,
    ],
    [
      "sheet-swapped",
      { points: [{ speed_rpm: 60, torque_Nm: 4000, efficiency_frac: 0.9 }] },
      /likely changed over: 4000 rpm and 60 Nm/,
    ],
    ["sheet-range", { points: [{ speed_rpm: 14_000, torque_Nm: 60, efficiency_frac: 0.9 }] }, /14000 rpm/],
    ["sheet-range", { points: [{ speed_rpm: 4000, torque_Nm: 200, efficiency_frac: 0.9 }] }, /200 Nm/],
    ["sheet-power", { peakPower_kW: 300 }, /is only 176 kW/],
    ["sheet-power", { continuousPower_kW: 110 }, /at most the peak power/],
    ["sheet-range", { rated_V: 0 }, /above 0 wanted/],
    ["sheet-range", { topSpeed_rpm: Number.NaN }, /found NaN/],
  ])("%s %j", (code, wrong, message) => {
    const [problem] = problemsOf(wrong);
    expect(problem?.code).toBe(code);
    expect(problem?.message).toMatch(message);
  });
});
