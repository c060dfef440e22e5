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

describe("the figures of a fitted motor", () => {
  const points = [point(4000, 60), point(8000, 30)];
  const motor = fitDatasheet({ ...sheet, points });

  it("have each point's loss as given and as the law has it", () => {
    const [first] = motor.residuals;
    const speed_radps = 4000 * RADPS_PER_RPM;
    expect(first.given_W).toBeCloseTo(fourTermLoss_W(law, 60, speed_radps), 6);
    expect(first.fitted_W).toBeCloseTo(fourTermLoss_W(motor.law, 60, speed_radps), 9);
    expect(first.fitted_frac).toBeCloseTo((60 * speed_radps) / (60 * speed_radps + first.fitted_W), 12);
  });
  it("lose at continuous power and base speed what the heat limit is made of", () => {
    // 102 kW / 140 Nm = 728.6 rad/s; 50 kW there are 68.6 Nm.
    const base_radps = 102_000 / 140;
    expect(motor.continuousLoss_W).toBeCloseTo(fourTermLoss_W(motor.law, 50_000 / base_radps, base_radps), 6);
    expect(motor).toMatchObject({ reference_V: 300, maxSpeed_rpm: 12_000, continuousPower_kW: 50 });
    expect(motor.notes.at(-1)).toBe(
      `50 kW continuous becomes the heat limit: cooling that carries off the ${Number(motor.continuousLoss_W.toPrecision(2))} W lost at base speed, in air of 40 degC`,
    );
  });
  it("are in proportion: twice the loss at a point is twice each coefficient", () => {
    const [{ efficiency_frac, ...place }] = points;
    const fitted = (lost: number) =>
      fitDatasheet({ ...sheet, points: [{ ...place, efficiency_frac: 1 / (1 + lost * (1 / efficiency_frac - 1)) }] })
        .law;
    const [once, twice] = [fitted(1), fitted(2)].map((found) => Object.values(found));
    for (const [i, coeff] of once.entries()) expect(twice[i] / coeff).toBeCloseTo(2, 6);
  });
  it("are those of the usual motor where one point says just that", () => {
    const usual = fitDatasheet(sheet).law;
    const speed_radps = 5000 * RADPS_PER_RPM;
    const shaft_W = 50 * speed_radps;
    const efficiency_frac = shaft_W / (shaft_W + fourTermLoss_W(usual, 50, speed_radps));
    const found = fitDatasheet({ ...sheet, points: [{ speed_rpm: 5000, torque_Nm: 50, efficiency_frac }] }).law;
    for (const [key, coeff] of Object.entries(usual))
      expect(found[key as keyof typeof found] / coeff, key).toBeCloseTo(1, 6);
  });
  it("are told with how many points settle them: four", () => {
    const noted = (count: number) => {
      const some = [1500, 3000, 6000, 9000].slice(0, count).map((rpm) => point(rpm, 50));
      return fitDatasheet({ ...sheet, points: some }).notes.join("\n");
    };
    expect(noted(1)).toMatch(/^the law meets the point to/);
    expect(noted(3)).toMatch(/3 of at least 4 points that would settle the law/);
    expect(noted(4)).not.toMatch(/at least 4/);
  });
});

it("takes the figures of a small motor, and points at its very limits", () => {
  const small = { peakTorque_Nm: 0.9, peakPower_kW: 0.8, continuousPower_kW: 0.8, topSpeed_rpm: 12_000, rated_V: 0.9 };
  const points = [{ speed_rpm: 12_000, torque_Nm: 0.9, efficiency_frac: 0.8 }];
  expect(fitDatasheet({ ...sheet, ...small, points }).continuousPower_kW).toBe(0.8);
  expect(
    fitDatasheet({ ...sheet, points: [{ speed_rpm: 0.5, torque_Nm: 0.5, efficiency_frac: 0.1 }] }).residuals,
  ).toHaveLength(1);
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
    ["sheet-swapped", { points: [{ speed_rpm: 0.5, torque_Nm: 4000, efficiency_frac: 0.9 }] }, /4000 rpm and 0.5 Nm/],
    ["sheet-range", { points: [{ speed_rpm: 14_000, torque_Nm: 60, efficiency_frac: 0.9 }] }, /14000 rpm/],
    ["sheet-range", { points: [{ speed_rpm: 4000, torque_Nm: 200, efficiency_frac: 0.9 }] }, /200 Nm/],
    ["sheet-power", { peakPower_kW: 300 }, /is only 176 kW/],
    ["sheet-power", { continuousPower_kW: 110 }, /at most the peak power/],
    ["sheet-range", { rated_V: 0 }, /above 0 wanted/],
    ["sheet-range", { peakTorque_Nm: Number.POSITIVE_INFINITY }, /found Infinity/],
    [
      "sheet-range",
      { points: [{ speed_rpm: 0, torque_Nm: 60, efficiency_frac: 0.9 }] },
      /found 0 rpm, above 0 to 12000/,
    ],
    [
      "sheet-range",
      { points: [{ speed_rpm: 4000, torque_Nm: 0, efficiency_frac: 0.9 }] },
      /found 0 Nm, above 0 to 140/,
    ],
    [
      "sheet-efficiency",
      { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 2 }] },
      /found 2, above 0 and below 1 wanted$/,
    ],
    [
      "sheet-efficiency",
      { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 100 }] },
      /found 100, above 0 and below 1 wanted$/,
    ],
    ["sheet-efficiency", { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 0 }] }, /found 0, above 0/],
    ["sheet-efficiency", { points: [{ speed_rpm: 4000, torque_Nm: 60, efficiency_frac: 1 }] }, /found 1, above 0/],
    // Beyond both limits whichever way round: no changing over.
    ["sheet-range", { points: [{ speed_rpm: 60, torque_Nm: 13_000, efficiency_frac: 0.9 }] }, /13000 Nm/],
    ["sheet-range", { topSpeed_rpm: Number.NaN }, /found NaN/],
  ])("%s %j", (code, wrong, message) => {
    const [problem] = problemsOf(wrong);
    expect(problem?.code).toBe(code);
    expect(problem?.message).toMatch(message);
  });
});
