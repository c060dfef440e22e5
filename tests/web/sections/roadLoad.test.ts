import { expect, it } from "vitest";
import type { SteadyRow } from "../../../sim/index.ts";
import roadLoad from "../../../web/sections/roadLoad.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();
const values = sectionValues(job);

const held = (speed_kmh: number, changes: Partial<SteadyRow> = {}): SteadyRow => ({
  speed_kmh,
  rolling_N: 160,
  aero_N: 100,
  drag_N: 10,
  battery_Whpkm: 110,
  isHeld: true,
  range_km: 72,
  motor_rpm: 3000,
  motor_Nm: 20,
  efficiency_frac: 0.85,
  limit: "none",
  ...changes,
});
const notHeld = (speed_kmh: number, changes: Partial<SteadyRow>) => held(speed_kmh, { isHeld: false, ...changes });

/** The working for a first pack with these rows, with nothing known of the fuel. */
function told(...rows: readonly SteadyRow[]) {
  const { engine: _engine, ...plain } = job;
  const result = roadLoad.compute({ job: plain, steady: [rows], runs: values.runs, packIndex: 0, units: "metric" });
  const [table] = roadLoad.plot(result, drawing(640));
  return {
    sentence: roadLoad.sentence(result),
    summary: roadLoad.summary?.(result),
    attention: roadLoad.attention?.(result),
    rows: "rows" in table ? table.rows : [],
  };
}

it("says what the speed takes that people know best, and that a range by the clock is a least", () => {
  expect(told(held(50), held(60), held(70)).summary).toBe("110 Wh/km at a steady 60 km/h with 8 kWh");
  expect(told(held(60)).sentence).toMatch(
    /^At a steady 60 km\/h it takes 110 Wh\/km from the pack and would go 72 km with 8 kWh\./,
  );
  expect(told(held(60, { isAtLeast: true })).sentence).toContain("would go at least 72 km with");
});

it("says of a speed that is not held for how long it is, why, and what is held instead", () => {
  const cells = (changes: Partial<SteadyRow>) => told(held(60), notHeld(100, changes)).rows[1][1];
  // 240 s are four minutes; less than half a minute is not worth a word.
  expect(cells({ heldFor_s: 29, limit: "motor" })).toBe("not held: the motor gives no more");
  expect(cells({ heldFor_s: 240, heldAlways_kmh: 88, limit: "heat" })).toBe(
    "not held for more than 4 min: motor or pack too hot; 88 km/h is held until the pack is empty",
  );
});

it("warns of speeds that are not held up to 80 km/h, and of no faster ones", () => {
  const { attention } = told(held(60), notHeld(80, { limit: "pack" }), notHeld(90, { limit: "pack" }));
  expect(attention).toEqual(["80 km/h: not held: the pack gives no more."]);
});

it("says where no speed is held at all", () => {
  const { sentence, summary } = told(notHeld(30, { limit: "grip" }));
  expect(sentence).toMatch(/^The car holds none of these speeds on the level\./);
  expect(summary).toBe("no steady speed is held with 8 kWh");
});
