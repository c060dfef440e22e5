import { expect, it } from "vitest";
import { type GearboxStudy, knownEngine } from "../../../sim/index.ts";
import pace from "../../../web/sections/pace.ts";
import { drawing } from "../../support/drawing.ts";

/** A car that gains 2 m/s a second for 12 s and no more: 86.4 km/h. */
const car: GearboxStudy["pace"]["motor"] = {
  mass_kg: 1180,
  start: {
    time_s: Float64Array.of(0, 12, 120),
    speed_mps: Float64Array.of(0, 24, 24),
    distance_m: Float64Array.of(0, 144, 2736),
    gear: Uint8Array.of(0, 0, 0),
  },
  top: { speed_mps: 24, gear: "third", because: "pull", limit: "motor" },
};
/** Half as quick, and a little slower. */
const old: typeof car = {
  mass_kg: 1060,
  start: {
    time_s: Float64Array.of(0, 20, 120),
    speed_mps: Float64Array.of(0, 20, 20),
    distance_m: Float64Array.of(0, 200, 2200),
    gear: Uint8Array.of(0, 0, 0),
  },
  top: { speed_mps: 20, gear: "fourth", because: "pull" },
};

function told(engine?: typeof car, isTyped = false) {
  const curve = { speed_rpm: [900, 2200, 4800], torque_Nm: [88, 112, 82] };
  const known = knownEngine(engine && (isTyped ? { curve } : { ratedTorque_Nm: 112, ratedPower_kW: 41 }));
  const study = { pack: "13 kWh", pace: { motor: car, known, ...(engine && { engine }) } };
  const result = pace.compute({ gearbox: study as unknown as GearboxStudy, units: "metric" });
  const [figure, table] = pace.plot(result, drawing(640));
  return {
    summary: pace.summary?.(result),
    lines: result.starts.map(({ name }) => name),
    figure: "chart" in figure ? figure : undefined,
    table: "rows" in table ? table : undefined,
  };
}

it("has how long the motor takes to the speeds people know cars by, beside about how long the engine took", () => {
  // At 2 m/s2: 50 km/h = 13.89 m/s after 6.94 s, 80 km/h = 22.22 m/s after 11.11 s; at 1 m/s2 after 13.9 s, and never.
  expect(told(old).table?.rows).toEqual([
    ["0 to 50 km/h", "6.9 s", "about 14 s"],
    ["0 to 100 km/h", "not reached", "not reached"],
    ["50 km/h to 80 km/h", "4.2 s", "not reached"],
    ["80 km/h to 100 km/h", "not reached", "not reached"],
    ["Top speed", "86.4 km/h", "about 72 km/h"],
    ["All in all it weighs", "1180 kg", "1060 kg"],
  ]);
});

it("has no column, line or word of an engine that nobody knows", () => {
  const { table, lines, summary } = told();
  expect(table?.columns).toHaveLength(2);
  expect(table?.rows.every(({ length }) => length === 2)).toBe(true);
  expect(lines).toEqual(["motor"]);
  expect(`${table?.caption} ${table?.note} ${summary}`).not.toContain("engine");
  expect(told(old).lines).toEqual(["motor", "old engine"]);
});

it("says whether the engine's curve was typed or drawn, and doubts the rating only of a drawn one", () => {
  expect(told(old, true).table?.note).toMatch(/as typed(?!.*bare engine)/);
  expect(told(old, false).table?.note).toMatch(/drawn through its two rated points.*bare engine/);
});

it("has its first finding as the folded line, as no sentence", () => {
  expect(told().summary).toBe("from rest the car reaches 50 km/h in 6.9 s");
});
