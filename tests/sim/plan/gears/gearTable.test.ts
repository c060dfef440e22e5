import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { demandOf, gearTable } from "../../../../sim/plan/gears/gearTable.ts";
import { inOneGear } from "../../../../sim/plan/gears/oneGear.ts";
import { recommendGear } from "../../../../sim/plan/gears/recommendGear.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import { resample } from "../../../../sim/trace/resample.ts";
import { bareJob, type Changes, steadyTrace, traceOf } from "../../../support/bareCar.ts";

/** The four ratios of the worked example: wheels of 0.35 m, axle 4.7, box direct, 1.5, 2.3 and 3.5 to 1. */
const box = [
  { name: "first", gear_ratio: 3.5, efficiency_frac: 0.95 },
  { name: "second", gear_ratio: 2.3, efficiency_frac: 0.95 },
  { name: "third", gear_ratio: 1.5, efficiency_frac: 0.96 },
  { name: "top", gear_ratio: 1, efficiency_frac: 0.98 },
];
const car: Changes = {
  test_kg: 1600,
  vehicle: {
    kerb_kg: 1599,
    tyres: { loadedRadius_mm: 350, rolling_coeff: 0.015, followsTemperature: false },
    roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 },
  },
  driveline: {
    gears: box,
    finalDrive_ratio: 4.7,
    finalDriveEfficiency_frac: 0.95,
    shifting: { kind: "fixed", gear: "third" },
  },
  motor: {
    envelope: { kind: "peak", torque_Nm: 130, power_kW: 50 },
    maxSpeed_rpm: 7000,
    // Copper in the low gears' favour, iron and windage in the high ones'.
    loss: { kind: "fourTerm", copper_coeff: 0.1, iron_coeff: 0.5, windage_coeff: 0, constant_W: 50 },
  },
};
const road = resample(
  traceOf([
    [0, 0],
    [20, 60],
    [200, 60],
    [220, 0],
  ]),
  1,
);
const tableOf = (changes: Changes = {}, hill_ratio?: number, top_kmh = 60) => {
  const demand = { top_kmh, ...(hill_ratio !== undefined && { hill_ratio }) };
  const rows = gearTable(bareJob({ ...car, ...changes }), 0, road, demand);
  const advice = recommendGear(rows, demand);
  return { rows, ...advice, reasons: advice.reasons.map((reason) => messageIn(reason, "metric")) };
};

describe("of each gear", () => {
  const { rows } = tableOf({}, 0.15);

  it("is the motor's speed that v / (2 pi r) G has: 7480, 4916, 3206 and 2137 rpm at 60 km/h", () => {
    // Worked in the reference: wheels of 0.35 m, axle 4.7; to the printed digits.
    expect(rows.map(({ motorAtTop_rpm }) => Math.round(motorAtTop_rpm))).toEqual([7480, 4916, 3206, 2137]);
    expect(rows.map(({ top_kmh }) => top_kmh)).toEqual(rows.map(({ easy_kmh }) => expect.closeTo(easy_kmh / 0.9, 9)));
    expect(rows[0].top_kmh).toBeCloseTo((60 * 7000) / 7480, 1);
  });

  it("is the steepest start of the closed form: T G eta / r = m g (sin + crr cos)", () => {
    for (const [i, { gear_ratio, efficiency_frac }] of box.entries()) {
      const force_N = (130 * gear_ratio * 4.7 * efficiency_frac * 0.95) / 0.35;
      const grade = rows[i].steepestStart_percent / 100;
      const cos = 1 / Math.sqrt(1 + grade * grade);
      expect(1600 * 9.81 * (grade * cos + 0.015 * cos)).toBeCloseTo(force_N, 1);
      expect(rows[i].startLimit).toBe("motor");
    }
  });

  it("is the slope that the maker's rating climbs at 30 km/h: P eta / v = m g (sin + crr cos), by torque where that is less", () => {
    const rating = { continuous_kW: 10, peak_kW: 20, peak_s: 120 };
    const vehicle = { ...car.vehicle, roadLoad: { kind: "physical" as const, drag_coeff: 0, frontalArea_m2: 2 } };
    const rated = tableOf({ vehicle, motor: { ...car.motor, rating } }).rows.map((row) => row.rated);
    expect(rated).toHaveLength(4);
    for (const [i, { gear_ratio, efficiency_frac }] of box.entries()) {
      const speed_mps = 30 / 3.6;
      const perNm_N = (gear_ratio * 4.7 * efficiency_frac * 0.95) / 0.35;
      const turned_radps = (speed_mps * gear_ratio * 4.7) / 0.35;
      const force_N = (percent: number) => {
        const sin = Math.sin(Math.atan(percent / 100));
        return 1600 * 9.81 * (sin + 0.015 * Math.sqrt(1 - sin * sin));
      };
      const least_Nm = (power_W: number) => Math.min(130, power_W / turned_radps);
      expect(rated[i]).toMatchObject({ climb_kmh: expect.closeTo(30, 9), peak_s: 120 });
      expect(force_N(rated[i]?.continuous_percent ?? 0)).toBeCloseTo(least_Nm(10_000) * perNm_N, 1);
      expect(force_N(rated[i]?.peak_percent ?? 0)).toBeCloseTo(least_Nm(20_000) * perNm_N, 1);
    }
    // In top 20 kW would be 179 Nm: there it is the motor's 130 Nm.
    expect(20_000 / ((30 / 3.6) * (4.7 / 0.35))).toBeGreaterThan(130);
    expect(rows[0]).not.toHaveProperty("rated");
  });

  it("is the torque that the hill needs, and what is at hand beyond it", () => {
    const cos = 1 / Math.sqrt(1 + 0.15 * 0.15);
    const force_N = 1600 * 9.81 * cos * (0.15 + 0.015);
    const needed_Nm = (force_N * 0.35) / (2.3 * 4.7 * 0.95 * 0.95);
    const { hill } = rows[1];
    expect(hill?.needed_Nm).toBeCloseTo(needed_Nm, 3);
    expect(hill?.available_Nm).toBeCloseTo(130, 3);
    expect(hill?.starts).toBe(true);
    expect(hill?.spare_frac).toBeCloseTo(130 / needed_Nm - 1, 5);
    expect(rows[3].hill?.starts).toBe(false);
    expect(rows[3].hill?.held_s).toBeLessThan(60);
  });

  it("is what a run in that gear takes of the pack, and the share of the road that it misses", () => {
    const [first, , third] = rows;
    for (const [row, gear] of [
      [first, "first"],
      [third, "third"],
    ] as const) {
      const job = inOneGear(bareJob(car), { gear });
      const { totals } = run(prepare(job, job.packs[0]), road);
      expect(row.battery_Whpkm).toBeCloseTo(totals.terminal_J / 3600 / (totals.distance_m / 1000), 9);
      expect(row.missed_frac).toBeCloseTo(1 - totals.distance_m / totals.target_m, 12);
    }
    expect(first.missed_frac).toBeGreaterThan(0.02);
    expect(third.missed_frac).toBe(0);
    const dead = tableOf({ controller: { min_V: 900, regen: { isOn: false } } }).rows[0];
    expect(dead).not.toHaveProperty("battery_Whpkm");
    expect(dead).toMatchObject({ missed_frac: 1, steepestStart_percent: 0, startLimit: "controller" });
    expect(gearTable(bareJob(car), 0, steadyTrace(0, 5, 1), { top_kmh: 60 })[0].missed_frac).toBe(0);
  });

  it("is how long it climbs the hill at 30 km/h, or slower where that is above the easy speed of the gear", () => {
    expect(rows[1].hill).toMatchObject({ grade_percent: 15, climb_kmh: expect.closeTo(30, 9) });
    const low = tableOf({ motor: { ...car.motor, maxSpeed_rpm: 3000 } }, 0.1).rows[0];
    expect(low.hill?.climb_kmh).toBeCloseTo(low.easy_kmh, 9);
    expect(low.easy_kmh).toBeLessThan(30);
  });

  it("is the overall ratio from the motor to the wheels", () => {
    expect(rows.map(({ overall_ratio }) => overall_ratio)).toEqual(
      box.map(({ gear_ratio }) => expect.closeTo(gear_ratio * 4.7, 9)),
    );
  });

  it("is 0 to 50 km/h only where that is reached", () => {
    expect(rows[1].to50kmh_s).toBeGreaterThan(3);
    expect(rows[0].to50kmh_s).toBeDefined();
    expect(tableOf({ motor: { ...car.motor, maxSpeed_rpm: 3000 } }).rows[0].to50kmh_s).toBeUndefined();
  });
});

describe("which gear to live in", () => {
  it("is the one that does it all with the least energy, and each other one has its reason", () => {
    const { recommended, reasons, rows } = tableOf({}, 0.12);
    const able = rows.filter(({ gear }) => gear === "second" || gear === "third");
    const least = able.reduce((a, b) => ((a.battery_Whpkm ?? 0) < (b.battery_Whpkm ?? 0) ? a : b));
    expect(recommended?.gear).toBe("second");
    expect(reasons[0]).toBe(
      "Live in second: it reaches 60 km/h with the motor in hand, starts on 12 % with a fifth of torque to spare, and keeps up with the road.",
    );
    expect(least.gear).toBe("third");
    expect(reasons[1]).toMatch(/^First: 7480 rpm at 60 km\/h is beyond the motor, which ends at 56\.1 km\/h/);
    expect(reasons[2]).toMatch(/^Third: starts on 12 % with only \d+ % of torque to spare\.$/);
    // 15696 N (0.12 + 0.015) cos, over 4.7 x 0.98 x 0.95 / 0.35 m.
    expect(reasons[3]).toMatch(/^Top: does not start on 12 %: needs 168 Nm, has 130 Nm/);
  });

  it("is the thriftier one of two that do it", () => {
    const { recommended, reasons } = tableOf({}, 0.08);
    expect(recommended?.gear).toBe("third");
    expect(reasons.join("\n")).toMatch(/^Second: would do too, and takes \d+(\.\d+)? % more energy on this road\.$/m);
  });

  it("is none, with what has to be changed between, where no gear does it all", () => {
    const { recommended, reasons } = tableOf({}, 0.25, 110);
    expect(recommended).toBeUndefined();
    expect(reasons[0]).toBe(
      "No single gear does it all. First starts on the hill and third reaches the speed: the car has to be changed between them.",
    );
  });

  it("is never in low range, though a low gear is listed with it", () => {
    const { rows, recommended, reasons } = tableOf({
      driveline: {
        ...car.driveline,
        transferBox: {
          high_ratio: 1,
          highEfficiency_frac: 1,
          low_ratio: 2.5,
          lowEfficiency_frac: 0.95,
          range: "high",
          isFrontEngaged: false,
          hubs: "free",
        },
      },
    });
    expect(rows.map(({ gear, range }) => `${gear} ${range}`)).toContain("top low");
    const [high, low] = ["high", "low"].map((range) => rows.find((row) => row.gear === "third" && row.range === range));
    expect((high?.top_kmh ?? 0) / (low?.top_kmh ?? 1)).toBeCloseTo(2.5, 9);
    expect(recommended?.range).toBe("high");
    expect(reasons.join("\n")).toMatch(/Top, low range: would do, but low range is for the rough/);
  });
});

it("asks of the gears what the road asks: its top speed and its steepest 60 m", () => {
  const profile = { distance_m: Float64Array.of(0, 500, 600, 3500), elevation_m: Float64Array.of(0, 10, 22, 22) };
  const { hill_ratio, top_kmh } = demandOf({ ...road, profile });
  expect(top_kmh).toBeCloseTo(60, 9);
  expect(hill_ratio).toBeCloseTo(0.12 / Math.sqrt(1 - 0.12 ** 2), 9);
  expect(demandOf(road).hill_ratio).toBeUndefined();
});
