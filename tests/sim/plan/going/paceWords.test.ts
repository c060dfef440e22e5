import { describe, expect, it } from "vitest";
import { knownEngine } from "../../../../sim/plan/going/knownEngine.ts";
import type { GearChange, Pace } from "../../../../sim/plan/going/pace.ts";
import { paceRows, paceWords } from "../../../../sim/plan/going/paceWords.ts";
import type { TopSpeed } from "../../../../sim/plan/going/topSpeed.ts";

/** A start that gains so many metres a second each second, for a minute. */
function carOf(accel_mps2: number, top: Partial<TopSpeed> = {}): Pace["motor"] {
  const time_s = Float64Array.from({ length: 61 }, (_, i) => i);
  return {
    mass_kg: 1000,
    start: {
      time_s,
      speed_mps: time_s.map((at_s) => accel_mps2 * at_s),
      distance_m: time_s,
      gear: new Uint8Array(61),
    },
    top: { speed_mps: 30, gear: "4", because: "pull", limit: "motor", ...top },
  };
}
const paceOf = (changes: Partial<Pace> = {}): Pace => ({
  motor: carOf(1),
  engine: carOf(0.5),
  known: { assumed: [], missing: [] },
  ...changes,
});
const { engine: _, ...alone } = paceOf();

describe("the times that people know cars by", () => {
  it("are those of the start, from a speed as well as from rest", () => {
    const rows = paceRows(paceOf(), "metric");
    expect(rows.map(({ from_kmh, to_kmh }) => [from_kmh, to_kmh])).toEqual([
      [0, 50],
      [0, 100],
      [50, 80],
      [80, 100],
    ]);
    // At 1 m/s2 50 km/h take 13.9 s, and 80 km/h 8.3 s more; at half of it twice as long.
    expect(rows[0].motor_s).toBeCloseTo(50 / 3.6, 6);
    expect(rows[2].motor_s).toBeCloseTo(30 / 3.6, 6);
    expect(rows[2].engine_s).toBeCloseTo(60 / 3.6, 6);
  });
  it("are in round miles an hour for who reads those", () => {
    const rows = paceRows(paceOf(), "british");
    expect(rows.map(({ from_kmh, to_kmh }) => [from_kmh / 1.609344, to_kmh / 1.609344].map(Math.round))).toEqual([
      [0, 30],
      [0, 60],
      [30, 50],
      [50, 60],
    ]);
  });
  it("are absent where a speed is not reached", () => {
    // 60 s at 0.4 m/s2 are 24 m/s, 86.4 km/h.
    const rows = paceRows({ ...alone, motor: carOf(0.4) }, "metric");
    expect(rows.map(({ motor_s }) => motor_s !== undefined)).toEqual([true, false, true, false]);
    expect(rows[0]).not.toHaveProperty("engine_s");
  });
});

describe("the start in words", () => {
  const start = (pace: Pace) => paceWords(pace, "metric")[0];
  it("is to the highest round speed that either car reaches", () => {
    expect(start(paceOf())).toBe(
      "From rest the car reaches 100 km/h in 27.8 s; with the old engine it took about 56 s.",
    );
    expect(start(paceOf({ motor: carOf(0.4), engine: carOf(0.4) }))).toBe(
      "From rest the car reaches 50 km/h in 34.7 s; with the old engine it took about 35 s.",
    );
    expect(start(alone)).toBe("From rest the car reaches 100 km/h in 27.8 s.");
  });
  it("says where one of the two does not get there, or neither", () => {
    expect(start(paceOf({ motor: carOf(0.4) }))).toBe(
      "From rest the car does not reach 100 km/h in two minutes; with the old engine it took about 56 s.",
    );
    expect(start(paceOf({ engine: carOf(0.4) }))).toMatch(/in 27\.8 s; with the old engine it did not\.$/);
    expect(start({ ...alone, motor: carOf(0.1) })).toBe("From rest the car does not reach 50 km/h in two minutes.");
  });
});

describe("the top speed in words", () => {
  const top = (motor: Partial<TopSpeed>, engine?: Partial<TopSpeed>) =>
    paceWords({ ...alone, motor: carOf(1, motor), ...(engine && { engine: carOf(1, engine) }) }, "metric")[1];
  it("says in which gear, and what ends it", () => {
    expect(top({})).toBe("Flat out on the level it gets to 108 km/h, in 4: the motor gives no more.");
    expect(top({ because: "rotation" })).toMatch(/, in 4: the motor turns no faster\.$/);
    expect(top({ limit: "pack" })).toMatch(/: the pack gives no more\.$/);
    expect(top({ limit: "heat" })).toMatch(/: motor or pack are too hot for more\.$/);
    expect(top({ limit: "grip" })).toMatch(/: the driven tyres have no more grip\.$/);
  });
  it("has the old engine's beside it", () => {
    expect(top({}, { speed_mps: 40, gear: "3" })).toMatch(
      /\. The old engine's top speed was about 144 km\/h, in 3, where it had no more power\.$/,
    );
    expect(top({}, { because: "rotation" })).toMatch(/, where it turned no faster\.$/);
  });
});

describe("the engine in words", () => {
  const engine = (pace: Pace) => paceWords(pace, "metric").slice(2);
  it("is nothing where all of it is known, and what was assumed where not", () => {
    expect(engine(paceOf())).toEqual([]);
    expect(engine(paceOf({ known: { assumed: ["torque_rpm"], missing: [] } }))[0]).toMatch(
      /^Not known of the engine: the speed of its best torque; assumed from the rest/,
    );
  });
  it("says of a typed curve that it is that, and how far it goes", () => {
    const known = knownEngine({ curve: { speed_rpm: [1000, 2500, 5500], torque_Nm: [80, 100, 70] } });
    expect(engine(paceOf({ known }))).toEqual([
      "The old engine's torque at full throttle is as typed, from 1000 rpm to 5500 rpm.",
    ]);
  });
  it("is what to type where there is none: one thing, two, or three", () => {
    const missing = (...paths: readonly string[]) => engine({ ...alone, known: { assumed: [], missing: paths } })[0];
    expect(missing("engine.ratedPower_kW")).toBe(
      "How it went with the old engine is not known: type its rated power, under Motor.",
    );
    expect(missing("engine.ratedPower_kW", "engine.power_rpm", "engine.torque_rpm")).toMatch(
      /: type its rated power, the speed of its best power and the speed of its best torque, under Motor\.$/,
    );
  });
});

describe("changes of gear in words", () => {
  const change: GearChange = {
    from: "2",
    to: "3",
    speed_mps: 10,
    from_radps: 600,
    to_radps: 300,
    rotor_J: 50,
    synchro_Nm: 12,
  };
  const changes = (given: Partial<NonNullable<Pace["change"]>>) =>
    paceWords(
      paceOf({ change: { change_s: 2.5, isAssumed: true, coupling: "direct", changes: [], ...given } }),
      "metric",
    ).slice(2);
  it("say how long one is counted as, and whether that is assumed", () => {
    expect(changes({})).toEqual([
      "A change of gear without a clutch is counted as 2.5 s without drive (common practice, no source).",
    ]);
    expect(changes({ isAssumed: false, coupling: "clutch", change_s: 0.8 })).toEqual([
      "A change of gear with the old clutch is counted as 0.8 s without drive.",
    ]);
  });
  it("say of the hardest what the synchro rings would take, where there is no clutch and energy to lose", () => {
    const [hard] = changes({
      changes: [{ ...change, from: "1", rotor_J: 20 }, change, { ...change, from: "3", rotor_J: 0.5 }],
    });
    expect(hard).toMatch(
      / From 2 to 3 at 36 km\/h the motor's rotor comes down from 5730 rpm to 2860 rpm; .* they would take 12 Nm at the gearbox input/,
    );
    expect(changes({ changes: [{ ...change, rotor_J: 0.5 }] })[0]).toMatch(/synchro rings/);
    expect(changes({ changes: [{ ...change, rotor_J: 0 }] })[0]).not.toMatch(/synchro rings/);
    expect(changes({ coupling: "clutch", changes: [change] })[0]).not.toMatch(/synchro rings/);
  });
});
