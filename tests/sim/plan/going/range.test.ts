import { describe, expect, it } from "vitest";
import { driveOn, rangeOn } from "../../../../sim/plan/going/range.ts";
import { thereAndBack } from "../../../../sim/plan/going/returnTrip.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import type { Trace } from "../../../../sim/trace/trace.ts";
import { bareJob, type Changes, traceOf } from "../../../support/bareCar.ts";

/** 300 N all the way: a pack of 400 V and half of 1 Ah holds 720 kJ, 2400 m of that. */
const small: Changes = {
  vehicle: { roadLoad: { kind: "coastDown", f0_N: 300, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  controller: { regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
  module: { capacity_Ah: 1 },
  pack: { floor_frac: 0.25, ceiling_frac: 0.75 },
};
const rangeWith = (changes: Changes, trace: Trace) => {
  const job = bareJob({ ...small, ...changes });
  return rangeOn(prepare(job, job.packs[0]), trace);
};
/** 100 m and back to rest. */
const lap = traceOf([
  [0, 0],
  [10, 36],
  [20, 0],
]);

describe("a road over and over", () => {
  it("goes on to the floor, the last step cut in proportion", () => {
    const { distance_m, end } = rangeWith({}, lap);
    expect(end).toBe("floor");
    // What it has in motion where it stops short is on the way: less than one speeding up.
    expect(distance_m).toBeGreaterThan(2400 - 70_000 / 300);
    expect(distance_m).toBeLessThanOrEqual(2400 + 1e-6);
  });

  it("goes on from the first pass, which is what one run gives", () => {
    const job = bareJob(small);
    const model = prepare(job, job.packs[0]);
    const { once, range } = driveOn(model, lap);
    expect(once).toEqual(run(model, lap));
    expect(range.distance_m).toBeGreaterThan(10 * once.totals.distance_m);
  });

  it("ends where a whole repetition covers less than half of its road", () => {
    const { end, distance_m } = rangeWith(
      { motor: { envelope: { kind: "peak", torque_Nm: 16, power_kW: 2000 } } },
      lap,
    );
    expect(end).toBe("stuck");
    expect(distance_m).toBeGreaterThan(0);
    expect(distance_m).toBeLessThan(50);
  });

  it("ends after a day: at least so far", () => {
    const { end, distance_m } = rangeWith(
      { module: { capacity_Ah: 2000 } },
      {
        ...traceOf([
          [0, 36],
          [3600, 36],
        ]),
      },
    );
    expect(end).toBe("time");
    expect(distance_m).toBeCloseTo(24 * 36_000, 3);
  });
});

describe("a road that ends elsewhere", () => {
  const hill = (height_m: number): Trace => ({
    ...lap,
    profile: {
      distance_m: Float64Array.of(0, 40, 100),
      elevation_m: Float64Array.of(
        Math.max(0, -height_m),
        Math.max(0, -height_m) + 0.4 * height_m,
        Math.max(0, height_m),
      ),
    },
  });

  it("is driven over and over while its climb is at most 0.5 % of the energy of one pass", () => {
    // One pass takes 300 N over 100 m from the pack: 30 kJ, and the weight is 13734 N: 0.5 % are 10.9 mm.
    expect(rangeWith({}, hill(0.0108)).isThereAndBack).toBe(false);
    expect(rangeWith({}, hill(0.0111)).isThereAndBack).toBe(true);
    expect(rangeWith({}, hill(-0.0108)).isThereAndBack).toBe(false);
    expect(rangeWith({}, hill(-0.0111)).isThereAndBack).toBe(true);
    expect(rangeWith({}, lap).isThereAndBack).toBe(false);
  });

  it("gives nothing away, up or down: without losses there and back is as far as on the level", () => {
    // Short of it at most by what it has in motion and in height where it stops.
    const level_m = rangeWith({}, lap).distance_m;
    for (const height_m of [2, 10, 19, -2, -10, -19]) {
      const { distance_m, end, rise_m } = rangeWith({}, hill(height_m));
      expect(end).toBe("floor");
      expect(rise_m).toBeCloseTo(height_m, 6);
      expect(Math.abs(distance_m - level_m)).toBeLessThan(240 + (Math.abs(height_m) * 13_734) / 300);
    }
  });

  it("has no range from falling 18 m in 235 m over and over", () => {
    const falling = traceOf(
      [
        [0, 0],
        [10, 36],
        [23.5, 36],
        [33.5, 0],
      ],
      { distance_m: Float64Array.of(0, 235), elevation_m: Float64Array.of(18, 0) },
    );
    const regenerating: Changes = { pack: { floor_frac: 0.25, ceiling_frac: 0.95 } };
    const { distance_m, end, isThereAndBack, rise_m } = rangeWith(regenerating, falling);
    expect(isThereAndBack).toBe(true);
    expect(rise_m).toBeCloseTo(-18, 9);
    expect(end).toBe("floor");
    // 0.7 Ah of 400 V over 300 N.
    expect(distance_m).toBeLessThanOrEqual((0.7 * 400 * 3600) / 300 + (18 * 13_734) / 300);
  });

  it("is begun again where the car stands, so that a weak car cannot climb less than it falls", () => {
    // Down a dip and up again; 3000 N are not enough to go all the way up: the second way begins in the dip.
    const dip = traceOf(
      [
        [0, 0],
        [10, 36],
        [40, 36],
        [50, 0],
      ],
      { distance_m: Float64Array.of(0, 200, 400), elevation_m: Float64Array.of(60, 0, 60) },
    );
    const weak: Changes = { motor: { envelope: { kind: "peak", torque_Nm: 150, power_kW: 2000 } } };
    const { distance_m, end } = rangeWith(weak, dip);
    expect(end).not.toBe("time");
    // All it holds at the start, in the pack and in height, over 300 N.
    expect(distance_m).toBeLessThanOrEqual((720_000 + 60 * 13_734) / 300);
  });
});

describe("a wind", () => {
  const draughty: Changes = {
    vehicle: { roadLoad: { kind: "physical", drag_coeff: 1, frontalArea_m2: 5 } },
    environment: { headWind_kmh: 30 },
  };
  const uphill: Trace = {
    ...lap,
    profile: { distance_m: Float64Array.of(0, 100), elevation_m: Float64Array.of(0, 5) },
  };

  it("that is against the car on the way out is with it on the way home", () => {
    const against_m = rangeWith(draughty, uphill).distance_m;
    const with_m = rangeWith({ ...draughty, environment: { headWind_kmh: -30 } }, uphill).distance_m;
    // Each way with either wind once: whichever comes first makes a difference to the last of some twenty ways only.
    expect(with_m / against_m).toBeGreaterThan(0.9);
    expect(with_m / against_m).toBeLessThan(1.1);
  });
});

it("has no range where a repetition draws nothing", () => {
  const pushed: Changes = {
    vehicle: { roadLoad: { kind: "physical", drag_coeff: 1, frontalArea_m2: 10 } },
    environment: { headWind_kmh: -100 },
  };
  const { distance_m, end } = rangeWith(pushed, lap);
  expect(end).toBe("endless");
  expect(distance_m).toBe(0);
});

describe("the way home", () => {
  const uphill: Trace = {
    ...lap,
    profile: { distance_m: Float64Array.of(0, 40, 100), elevation_m: Float64Array.of(0, 10, 25) },
  };
  const heights = ({ profile }: Trace) => [[...(profile?.distance_m ?? [])], [...(profile?.elevation_m ?? [])]];

  it("has the same heights in reverse, at the same speeds in reverse", () => {
    const home = thereAndBack(uphill).home(100);
    expect([...home.time_s]).toEqual([0, 10, 20]);
    expect([...home.speed_mps]).toEqual([0, 10, 0]);
    expect(heights(home)).toEqual([
      [0, 60, 100],
      [25, 10, 0],
    ]);
  });

  it("begins where the car stands, and so does the next way out", () => {
    const { home, out } = thereAndBack(uphill);
    expect(heights(home(70))).toEqual([
      [0, 30, 70],
      [17.5, 10, 0],
    ]);
    expect(heights(out(20))).toEqual([
      [0, 20, 80],
      [5, 10, 25],
    ]);
    expect(heights(home(0))).toEqual([
      [0, 1],
      [0, 0],
    ]);
  });

  it("is level where the heights end before the road, and has only the heights of the road where they go on", () => {
    const short = { distance_m: Float64Array.of(0, 60), elevation_m: Float64Array.of(0, 30) };
    expect(heights(thereAndBack({ ...lap, profile: short }).home(100))).toEqual([
      [0, 40, 100],
      [30, 30, 0],
    ]);
    const long = { distance_m: Float64Array.of(0, 400), elevation_m: Float64Array.of(0, 40) };
    expect(heights(thereAndBack({ ...lap, profile: long }).home(100))).toEqual([
      [0, 100],
      [10, 0],
    ]);
  });
});
