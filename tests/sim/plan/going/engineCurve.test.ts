import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { RADPS_PER_RPM } from "../../../../shared/units.ts";
import { type EngineRating, engineCurve } from "../../../../sim/plan/going/engineCurve.ts";

const small: EngineRating = { ratedTorque_Nm: 80, torque_rpm: 2500, ratedPower_kW: 30, power_rpm: 5000 };

function problemsOf(wrong: Partial<EngineRating>) {
  try {
    engineCurve({ ...small, ...wrong });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error(`drawn without complaint: ${JSON.stringify(wrong)}`);
}

describe("an old engine's curve", () => {
  it("goes through both rated points", () => {
    const { speed_rpm, torque_Nm, power_kW } = engineCurve(small);
    expect(torque_Nm[speed_rpm.indexOf(2500)]).toBeCloseTo(80, 9);
    expect(power_kW[speed_rpm.indexOf(5000)]).toBeCloseTo(30, 9);
  });

  it("runs from idle to the limit, each given or assumed and said", () => {
    const assumed = engineCurve(small);
    expect(assumed.speed_rpm[0]).toBe(800);
    expect(assumed.speed_rpm.at(-1)).toBeCloseTo(5500, 9);
    expect(assumed.notes.filter((note) => note.includes("assumed")).length).toBe(2);
    const given = engineCurve({ ...small, idle_rpm: 650, limit_rpm: 5750 });
    expect([given.speed_rpm[0], given.speed_rpm.at(-1)]).toEqual([650, 5750]);
    expect(given.notes.length).toBe(1);
  });

  it("has a row every hundred revolutions and at its ends and rated speeds, each once, rising", () => {
    const { speed_rpm } = engineCurve({ ...small, torque_rpm: 2550, idle_rpm: 650, limit_rpm: 5020 });
    const hundreds = Array.from({ length: 44 }, (_, i) => 700 + 100 * i);
    expect(speed_rpm).toEqual([650, 2550, 5020, ...hundreds].sort((a, b) => a - b));
    expect(speed_rpm).toContain(5000);
  });

  it("is the parabola, the cubic and the tangent that are promised", () => {
    // T1 = 80 Nm at 2500 rpm, T2 = 30 kW / 523.6 rad/s = 57.30 Nm at 5000 rpm.
    const { speed_rpm, torque_Nm } = engineCurve(small);
    const at = (rpm: number) => torque_Nm[speed_rpm.indexOf(rpm)];
    const T2 = 30_000 / (5000 * RADPS_PER_RPM);
    expect(at(1000)).toBeCloseTo(80 * (1 - 0.25 * 0.6 ** 2), 9);
    expect(at(5400)).toBeCloseTo(T2 * (2 - 1.08), 9);
    // Half way a cubic that begins level is the mean of its ends less an eighth of the span times its slope at the end, -T2 / 5000.
    const even = engineCurve({ ...small, torque_rpm: 2400 });
    const half_Nm = even.torque_Nm[even.speed_rpm.indexOf(3700)];
    expect(half_Nm).toBeCloseTo((80 + T2) / 2 + ((T2 / 5000) * 2600) / 8, 9);
  });

  it("leaves its best torque level and meets its best power with the slope of level power, of any engine between", () => {
    const { speed_rpm, torque_Nm } = engineCurve({ ...small, torque_rpm: 2500.5, limit_rpm: 5001 });
    const at = (rpm: number) => torque_Nm[speed_rpm.indexOf(rpm)];
    const T2 = 30_000 / (5000 * RADPS_PER_RPM);
    // Across the hundred before the best power: T2 / 5000 a revolution but for the curve's bend.
    expect((at(5000) - at(5001)) * 5000).toBeCloseTo(T2, 6);
    expect((at(4900) - at(5000)) / 100 / (T2 / 5000)).toBeGreaterThan(0.9);
    expect((at(4900) - at(5000)) / 100 / (T2 / 5000)).toBeLessThan(1.1);
  });

  it("idles at half the speed of best torque where that is less than 800 rpm", () => {
    const slow = { ratedTorque_Nm: 200, torque_rpm: 1000, ratedPower_kW: 30, power_rpm: 2000 };
    const curve = engineCurve(slow);
    expect(curve.speed_rpm[0]).toBe(500);
    expect(curve.notes).toContain("idle at 500 rpm assumed");
    expect(curve.notes).toContain("limit at 2200 rpm assumed");
  });

  it("is drawn for the smallest of engines", () => {
    const model = { ratedTorque_Nm: 0.9, torque_rpm: 6000, ratedPower_kW: 0.8, power_rpm: 9000 };
    expect(engineCurve(model).torque_Nm.length).toBeGreaterThan(20);
  });

  it("has its best torque and its best power where the handbook has them, for any engine", () => {
    let drawn = 0;
    const rating = fc.record({
      ratedTorque_Nm: fc.double({ min: 30, max: 400, noNaN: true }),
      torque_rpm: fc.integer({ min: 1200, max: 4000 }),
      spread: fc.double({ min: 1.1, max: 2.5, noNaN: true }),
      share: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    });
    fc.assert(
      fc.property(rating, ({ ratedTorque_Nm, torque_rpm, spread, share }) => {
        // rated power between what best torque is already, and what it would be were torque flat
        const power_rpm = Math.round(torque_rpm * spread);
        const known_kW = (ratedTorque_Nm * torque_rpm * RADPS_PER_RPM) / 1000;
        const ratedPower_kW = known_kW * (1 + share * (power_rpm / torque_rpm - 1));
        if (ratedTorque_Nm > torque_rpm) return true;
        const curve = engineCurve({ ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm });
        drawn++;
        const rounding = 1 + 1e-9;
        return (
          curve.torque_Nm.every((torque) => torque >= 0 && torque <= ratedTorque_Nm * rounding) &&
          curve.power_kW.every((power) => power >= 0 && power <= ratedPower_kW * rounding) &&
          curve.speed_rpm.every((speed, i) => i === 0 || speed > (curve.speed_rpm[i - 1] ?? 0))
        );
      }),
      { numRuns: 1000, seed: 9 },
    );
    expect(drawn).toBe(1000);
  });

  it("falls from best torque on and rises to it", () => {
    const { speed_rpm, torque_Nm } = engineCurve(small);
    const top = speed_rpm.indexOf(2500);
    for (let i = 1; i < torque_Nm.length; i++) {
      const rise_Nm = (torque_Nm[i] ?? 0) - (torque_Nm[i - 1] ?? 0);
      if (i <= top) expect(rise_Nm).toBeGreaterThan(0);
      else expect(rise_Nm).toBeLessThan(0);
    }
  });
});

describe("ratings refused", () => {
  it.each<[keyof EngineRating, Partial<EngineRating>, RegExp]>([
    ["ratedPower_kW", { ratedPower_kW: 60 }, /which takes 115 Nm/],
    ["ratedPower_kW", { ratedPower_kW: 15 }, /at least the 20.9 kW/],
    ["power_rpm", { power_rpm: 2000, ratedPower_kW: 15 }, /above the speed of best torque, 2500 rpm/],
    ["torque_rpm", { ratedTorque_Nm: 2500, torque_rpm: 80 }, /likely changed over: 80 Nm at 2500 rpm/],
    ["idle_rpm", { idle_rpm: 3000 }, /below 2500 rpm/],
    ["limit_rpm", { limit_rpm: 4000 }, /5000 to below 10000 rpm/],
    ["ratedTorque_Nm", { ratedTorque_Nm: 0 }, /above 0 to 5000/],
    ["ratedTorque_Nm", { ratedTorque_Nm: 5001 }, /above 0 to 5000/],
    ["torque_rpm", { torque_rpm: 15_001 }, /above 0 to 15000/],
    ["ratedPower_kW", { ratedPower_kW: 1001 }, /above 0 to 1000/],
    ["power_rpm", { power_rpm: 15_001 }, /above 0 to 15000/],
    ["idle_rpm", { idle_rpm: 0 }, /above 0 and below 2500 rpm/],
    ["idle_rpm", { idle_rpm: 2500 }, /below 2500 rpm/],
    ["limit_rpm", { limit_rpm: 10_000 }, /to below 10000 rpm/],
  ])("%s: %j", (where, wrong, message) => {
    const problem = problemsOf(wrong).find((one) => one.where === where);
    expect(problem?.code).toBe("engine-rating");
    expect(problem?.message).toMatch(message);
  });
});
