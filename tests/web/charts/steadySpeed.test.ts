import { expect, it } from "vitest";
import type { SteadyRow } from "../../../sim/index.ts";
import { steadySpeed } from "../../../web/charts/steadySpeed.ts";
import { drawing } from "../../support/drawing.ts";

function row(speed_kmh: number, battery_Whpkm: number, range_km?: number): SteadyRow {
  return {
    speed_kmh,
    rolling_N: 100,
    aero_N: 100,
    drag_N: 0,
    battery_Whpkm,
    isHeld: range_km !== undefined,
    ...(range_km !== undefined && { range_km }),
    motor_rpm: 3000,
    motor_Nm: 30,
    efficiency_frac: 0.9,
    limit: "none",
  };
}

const pack = { name: "Six modules", index: 0, rows: [row(40, 100, 120), row(60, 140, 80), row(80, 200)] };

it("says energy and range at both ends, and that a speed is not held", () => {
  expect(steadySpeed([pack], drawing()).alt).toBe(
    "Energy and range at steady speed: Six modules 100 Wh/km and 120 km at 40 km/h, 200 Wh/km at 80 km/h (not held).",
  );
});

it("has no range in its table for a speed that is not held", () => {
  const { table } = steadySpeed([pack], drawing());
  expect(table.rows.map(([, , , range, held]) => [range === "" ? "" : Math.round(Number(range)), held])).toEqual([
    [120, "yes"],
    [80, "yes"],
    ["", "no"],
  ]);
});

it("reads between the speeds that were worked, and no range towards one that is not held", () => {
  const { read } = steadySpeed([pack], drawing());
  const at = (speed_kmh: number) => read(speed_kmh / 3.6);
  // Halfway from 40 to 60 km/h: 120 Wh/km and 100 km.
  expect(at(50)).toEqual({ where: "50 km/h", values: [{ label: "Six modules", text: "120 Wh/km, 100 km" }] });
  expect(at(70).values[0]?.text).toBe("170 Wh/km, not held");
});

it("leaves out a pack without a speed, and says so where none has one", () => {
  const none = { name: "None", index: 1, rows: [] };
  expect(steadySpeed([pack, none], drawing()).alt).not.toContain("None");
  expect(steadySpeed([none], drawing()).alt).toMatch(/^No steady speed was worked/);
});
