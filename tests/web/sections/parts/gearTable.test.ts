import { describe, expect, it } from "vitest";
import type { GearboxStudy, GearRow } from "../../../../sim/index.ts";
import { gearTables } from "../../../../web/sections/parts/gearTable.ts";

const second = {
  gear: 2,
  top_kmh: 70,
  easy_kmh: 63,
  motorAtTop_rpm: 6000,
  steepestStart_percent: 25,
  to50kmh_s: 8.04,
  battery_Whpkm: 150,
  missed_frac: 0.0004,
} as unknown as GearRow;
const third = { ...second, gear: 3, top_kmh: 110, steepestStart_percent: 0, missed_frac: 0.25 } as unknown as GearRow;
const { to50kmh_s: _never, battery_Whpkm: _none, ...stuck } = third;
const study = {
  pack: "A",
  demand: { top_kmh: 90 },
  gears: [second, stuck],
  gearAdvice: {},
} as unknown as GearboxStudy;

describe("the table of gears", () => {
  it("says what each does left alone, and what it does not reach", () => {
    const [driven, ...others] = gearTables(study, false, "metric");
    expect(others).toEqual([]);
    expect(driven.columns.map(({ title }) => title)).toContain("Motor at 90 km/h");
    expect(driven.rows.map((row) => row.slice(1))).toEqual([
      ["70 km/h", "63 km/h", "6000 rpm: no", "25 %", "8.0 s", "150 Wh/km", "none"],
      ["110 km/h", "63 km/h", "6000 rpm", "none", "not reached", "-", "25 %"],
    ]);
    expect(driven.note).toMatch(/road is level/);
  });

  it("has a row for changing as set", () => {
    const changing = { gears: [2, 3], to50kmh_s: 9, battery_Whpkm: 140, missed_frac: 0 };
    const [driven] = gearTables({ ...study, changing } as unknown as GearboxStudy, false, "metric");
    expect(driven.rows.at(-1)).toEqual(["changing 2, 3", "", "", "", "", "9.0 s", "140 Wh/km", "none"]);
  });

  it("has a second table where a hill is known", () => {
    const on = (hill: object, row: object) => ({ ...row, hill: { needed_Nm: 100, climb_kmh: 30, ...hill } });
    const gears = [
      on({ available_Nm: 150, spare_frac: 0.5, starts: true, held_s: 45, isHeldToEmpty: false }, second),
      on({ available_Nm: 150, spare_frac: 0.5, starts: true, held_s: 59.7, isHeldToEmpty: false }, second),
      on({ available_Nm: 80, spare_frac: -0.2, starts: false, held_s: 0.5, isHeldToEmpty: false }, second),
      on({ available_Nm: 150, spare_frac: 0.5, starts: true, held_s: 125, isHeldToEmpty: false }, second),
      on({ available_Nm: 150, spare_frac: 0.5, starts: true, held_s: 500, isHeldToEmpty: true }, second),
    ];
    const hilly = { ...study, gears, demand: { top_kmh: 90, hill_ratio: 0.2 } } as unknown as GearboxStudy;
    const [driven, onHill] = gearTables(hilly, true, "metric");
    expect(driven.note).toBeUndefined();
    expect(onHill.rows.map((row) => row.slice(1))).toEqual([
      ["100 Nm", "150 Nm, 50 %", "30 km/h, 45 s"],
      ["100 Nm", "150 Nm, 50 %", "30 km/h, 1 min"],
      ["100 Nm", "80 Nm: does not start", "30 km/h: not held"],
      ["100 Nm", "150 Nm, 50 %", "30 km/h, 2 min"],
      ["100 Nm", "150 Nm, 50 %", "30 km/h, until empty"],
    ]);
    expect(onHill.note).toMatch(/the client's hill/);
  });

  it("has what the maker's rating climbs, with or without a peak", () => {
    const rated = { climb_kmh: 30, continuous_percent: 0 };
    const gears = [
      { ...second, rated },
      { ...second, rated: { ...rated, continuous_percent: 10, peak_percent: 20, peak_s: 120 } },
    ];
    const [, table] = gearTables({ ...study, gears } as unknown as GearboxStudy, false, "metric");
    expect(table.rows.map((row) => row[1])).toEqual([
      "30 km/h: nothing continuous",
      "30 km/h: 10 % continuous, 20 % for 120 s",
    ]);
  });
});
