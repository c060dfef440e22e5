import { expect, it } from "vitest";
import type { CurrentsPlan } from "../../../../sim/index.ts";
import { durationCells, shelfCells } from "../../../../web/sections/parts/currentCells.ts";

it("has road beside hill for each length of time", () => {
  const point = (duration_s: number, battery_A: number) => ({ duration_s, battery_A, motor_Nm: 50, motor_A: 200 });
  const course = (battery_A: number) => ({ points: [point(0, battery_A), point(600, 100)], whole: point(0, 60) });
  const plan = { road: course(300), hill: course(250), hasMotorCurrent: false } as unknown as CurrentsPlan;
  const rows = durationCells(plan, "metric");
  expect(rows.map(([over]) => over)).toEqual(["peak", "10 min", "all of it"]);
  expect(rows[0].slice(1, 3)).toEqual(["300 A", "250 A"]);
  expect(durationCells({ ...plan, hasMotorCurrent: true }, "metric")[0]).toHaveLength(7);
});

it("lists the resistors of the shelf, with the one to begin with or the one that is fitted", () => {
  const row = (resistance_ohm: number) => ({
    resistance_ohm,
    settles_frac: 1,
    time_s: 0.899,
    energy_J: 14.4,
    peak_W: 96,
    rating_W: 10,
  });
  const shelf = (changes: object) =>
    shelfCells({ rows: [row(100), row(150)], ...changes } as unknown as CurrentsPlan["preCharge"], "metric");
  const chosen = shelf({ chosen: row(150), isFitted: false });
  expect(chosen.map((cells) => cells.at(-1))).toEqual(["", "begin with this"]);
  expect(chosen[0].slice(2, 4)).toEqual(["0.9 s", "14 J"]);
  const fitted = shelf({ chosen: row(120), isFitted: true });
  expect(fitted.map((cells) => cells.at(-1))).toEqual(["as fitted", "", ""]);
});
