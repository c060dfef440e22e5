import { describe, expect, it } from "vitest";
import { emptyFix, type Fix } from "../../../../sim/route/log/fixes.ts";
import { LongTable } from "../../../../sim/route/table/longTable.ts";
import { layoutOf } from "./layoutOf.ts";

/** Rows of seconds, name, value and unit as the fixes that they come to. */
function fixesOf(...rows: readonly (readonly [number, string, number, string])[]) {
  const layout = layoutOf("time,name,value,unit", ...rows.map((row) => row.join(",")));
  const long = LongTable.find(layout);
  const fixes: Fix[] = [];
  for (const row of layout.rows)
    long?.row(row, { ...emptyFix(1, 0), time_s: Number(row[0]) }, (fix) => fixes.push(fix));
  long?.flush((fix) => fixes.push(fix));
  return { long, fixes };
}

describe("a table of one value a row", () => {
  const { long, fixes } = fixesOf(
    [0, "Speed", 36, "km/h"],
    [0.2, "Altitude", 100, "ft"],
    [1, "Speed", 40, "km/h"],
    [1.1, "Pack voltage", 108_000, "mV"],
    [2, "Speed", 44, "km/h"],
  );
  it("makes a fix of what lies between two readings of its speed", () => {
    expect(fixes.map(({ time_s, speed_mps }) => [time_s, speed_mps])).toEqual([
      [0, 36],
      [1, 40],
      [2, 44],
    ]);
  });
  it("has other values in SI, and the speed as written with its unit", () => {
    expect(fixes[0].elevation_m).toBeCloseTo(30.48, 9);
    expect(fixes[1].extras.packVoltage_V).toBeCloseTo(108, 9);
    expect(long?.speedUnit).toBe("kmh");
  });
});

it("closes a fix that no speed follows for two seconds", () => {
  const { fixes } = fixesOf(
    [0, "Speed", 36, "km/h"],
    [1, "Altitude", 100, "m"],
    [5, "Altitude", 110, "m"],
    [6, "Speed", 40, "km/h"],
    [7, "Altitude", 120, "m"],
  );
  expect(fixes.map(({ time_s, elevation_m }) => [time_s, elevation_m])).toEqual([
    [0, 100],
    [6, 120],
  ]);
});

it("is not found in an ordinary table", () => {
  expect(LongTable.find(layoutOf("time,speed,height", "0,36,100", "1,40,100", "2,44,100"))).toBeUndefined();
});
