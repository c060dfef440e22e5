import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { climbHill, ratingVerdict } from "../../../../sim/plan/hills/climb.ts";
import { hillWords } from "../../../../sim/plan/hills/hillWords.ts";
import { judgeHill } from "../../../../sim/plan/hills/judgeHill.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** 18 N at the tyres a newton metre; 1400 kg, 13734 N, rolling 1 %, no air; 60 % of the weight in front, h/L a quarter. */
const car: Changes = {
  vehicle: {
    kerb_kg: 1399,
    tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
    roadLoad: { kind: "physical", drag_coeff: 0, frontalArea_m2: 0, wheelDrag_Nm: 0 },
    balance: { wheelbase_mm: 2400, gravityHeight_mm: 600, frontShare_frac: 0.6 },
  },
  driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 0, drivenAxle: "rear" },
  motor: { envelope: { kind: "peak", torque_Nm: 130, power_kW: 60 } },
  environment: { grip_coeff: 1 },
};
const SLOPE = 0.15;
const sin = SLOPE / Math.hypot(1, SLOPE);
const cos = 1 / Math.hypot(1, SLOPE);
const force_N = 13_734 * (sin + 0.01 * cos);
const hill = { grade_ratio: SLOPE, length_m: 1000 };
const judged = (changes: Changes = {}) => {
  const job = bareJob({ ...car, ...changes });
  const verdict = judgeHill(job, 0, hill, 30);
  return { job, verdict, words: hillWords(job, hill, verdict).map((said) => messageIn(said, "metric")) };
};

describe("a hill", () => {
  it("asks of the tyres its force over the driven axle's load, with what the slope moves to the rear", () => {
    const { grip } = judged().verdict;
    const by = Object.fromEntries(grip.map(({ drivenAxle, needed_coeff }) => [drivenAxle, needed_coeff]));
    expect(by["rear"]).toBeCloseTo(force_N / (13_734 * (0.4 * cos + 0.25 * sin)), 4);
    expect(by["front"]).toBeCloseTo(force_N / (13_734 * (0.6 * cos - 0.25 * sin)), 4);
    expect(by["both"]).toBeCloseTo(force_N / (13_734 * cos), 4);
  });

  it("is climbed at the power of its force at that speed, for its length over the speed", () => {
    const { climb } = judged().verdict.rows[0];
    expect(climb.duration_s).toBeCloseTo(120, 6);
    // Force over the driveline's efficiency, at 30 km/h.
    expect(climb.shaft_kW).toBeCloseTo(((force_N / 0.9) * (30 / 3.6)) / 1000, 2);
    expect(climb.slowsAfter_m).toBeUndefined();
  });

  it("says where a motor too weak for it falls behind", () => {
    const { climb } = judged({ motor: { envelope: { kind: "peak", torque_Nm: 120, power_kW: 8 } } }).verdict.rows[0];
    expect(climb.slowsAfter_m).toBeGreaterThan(0);
    expect(climb.slowsAfter_m).toBeLessThan(1000);
  });

  it("heats the motor as a lump by what it loses", () => {
    const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 240, derateTo_degC: 250 };
    const job = bareJob({ ...car, motor: { ...car.motor, loss: { kind: "flat", efficiency_frac: 0.8 }, heat } });
    const model = prepare(job, job.packs[0]);
    const { motorTop_degC = Number.NaN, shaft_kW } = climbHill(job, model, hill, 30 / 3.6);
    // A fifth of the electrical power, a quarter of the shaft's, for 120 s into 10 kJ/K.
    expect(motorTop_degC - 20).toBeCloseTo((0.25 * shaft_kW * 120) / 10, 1);
  });
});

describe("fully laden by the axle loads", () => {
  // 1400 kg as driven; 300 kg more on the middle of 2400 mm: 990 kg of 1700 in front.
  const weights = {
    wheelbase_mm: 2400,
    weighed: { front_kg: 840, rear_kg: 559 },
    out: [],
    in: [],
    plates: {},
    boxes: [{ name: "box", place_mm: 0, share_frac: 1 }],
    load: [{ name: "five and their luggage", mass_kg: 300, place_mm: 1200 }],
  };
  const ladenOf = (changes: Changes, weighed: Partial<Job["weights"]> = {}) => {
    const job: Job = { ...bareJob({ ...car, ...changes }), weights: { ...weights, ...weighed } };
    const verdict = judgeHill(job, 0, hill, 30);
    return { verdict, words: hillWords(job, hill, verdict).map((said) => messageIn(said, "metric")) };
  };

  it("a start needs as much more as the car is heavier, and the tyres carry what rests on them then", () => {
    const { verdict } = ladenOf({ environment: { grip_coeff: 0.3 } });
    const laden_N = 1700 * 9.81;
    expect(verdict.laden?.mass_kg).toBeCloseTo(1700, 9);
    expect(verdict.laden?.rows[0].needed_Nm).toBeCloseTo((laden_N * (sin + 0.01 * cos)) / 18, 3);
    // Rear: 709 kg of 1700 on the level, and a quarter of the slope's share.
    const grip_N = 0.3 * laden_N * ((709 / 1700) * cos + 0.25 * sin);
    expect(verdict.laden?.rows[0].available_Nm).toBeCloseTo(grip_N / 18, 2);
  });

  it("is said after the start as driven: with little to spare, or that it does not start", () => {
    const [, enough] = ladenOf({ motor: { envelope: { kind: "peak", torque_Nm: 160, power_kW: 60 } } }).words;
    // 147 Nm needed.
    expect(enough).toBe(
      "Fully laden, 1700 kg in all, only needs 147 Nm, has 160 Nm, 9.1 % to spare: a fifth is wanted.",
    );
    const [, not] = ladenOf({}).words;
    expect(not).toBe(
      "Fully laden, 1700 kg in all, it does not start on 15 % in only, which needs 147 Nm, has 130 Nm, as the motor gives no more, nor in any other gear.",
    );
  });

  it("is nothing where that is hardly heavier, or no axle was weighed", () => {
    expect(ladenOf({}, { load: [{ name: "a bag", mass_kg: 15, place_mm: 1200 }] }).verdict.laden).toBeUndefined();
    expect(judged().verdict.laden).toBeUndefined();
  });
});

describe("the maker's rating", () => {
  const rating = { continuous_kW: 18, peak_kW: 25, peak_s: 300 };
  it.each([
    [17, 9999, "holds"],
    [22, 290, "holdsShort"],
    [22, 301, "tooLong"],
    [26, 10, "tooMuch"],
  ] as const)("%d kW for %d s: %s", (kW, s, verdict) => {
    expect(ratingVerdict(rating, kW, s)).toBe(verdict);
  });
  it("without a peak covers what is continuous alone", () => {
    expect(ratingVerdict({ continuous_kW: 18 }, 19, 1)).toBe("tooMuch");
    expect(ratingVerdict(undefined, 19, 1)).toBeUndefined();
  });
});

describe("the words", () => {
  it("say start, climb and grip", () => {
    const [start, climb, grip] = judged().words;
    // 2173 N at 18 N a newton metre are 121 Nm.
    expect(start).toBe(
      "The car only just starts on 15 % in only, which needs 121 Nm, has 130 Nm; a fifth to spare is wanted.",
    );
    const weak = judged({ motor: { envelope: { kind: "peak", torque_Nm: 120, power_kW: 60 } } });
    expect(weak.words[0]).toBe(
      "The car does not start on 15 % in any gear: at best in only, which needs 121 Nm, has 120 Nm, as the motor gives no more.",
    );
    expect(climb).toMatch(/^1 km at 15 % in only at 30 km\/h is 120 s at 20\.1 kW\./);
    expect(grip).toMatch(
      /^Driven by the rear axle, the tyres need a friction of 0\.3\d to start on 15 %: they slip when it is loose/,
    );
  });

  it("say so where it starts, with what it has to spare", () => {
    const strong = judged({
      motor: {
        envelope: { kind: "peak", torque_Nm: 160, power_kW: 60 },
        rating: { continuous_kW: 18, peak_kW: 25, peak_s: 300 },
      },
    });
    expect(strong.words[0]).toBe(
      "The car starts on 15 % in only with a fifth of torque to spare: only needs 121 Nm, has 160 Nm.",
    );
    expect(strong.words[1]).toContain("continuous is 18 kW, and 25 kW for 300 s: it holds, and is hot at the top.");
  });

  it("say what is wanted where nobody knows where the weight sits", () => {
    const { words } = judged({ vehicle: { ...car.vehicle, balance: undefined } });
    expect(words.at(-1)).toMatch(/^Whether the tyres hold is not known/);
  });
});
