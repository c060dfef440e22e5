import { expect, it } from "vitest";
import { familiarRow, familiarSpeed_kmh, steadySpeeds_kmh } from "../../../../web/sections/parts/steadySpeeds.ts";

it("are round in the reader's own units", () => {
  expect(steadySpeeds_kmh("metric")).toContain(50);
  // 30 miles of 1.609344 km.
  expect(steadySpeeds_kmh("british")[2]).toBeCloseTo(48.28032, 9);
  expect(familiarSpeed_kmh("american")).toBeCloseTo(56.32704, 9);
});

it("has the row of about 60 km/h, or the fastest that the car holds", () => {
  const rows = [30, 50, 60, 80].map((speed_kmh) => ({ speed_kmh, isHeld: speed_kmh < 80 }));
  expect(familiarRow(rows, "metric")?.speed_kmh).toBe(60);
  expect(familiarRow(rows.slice(0, 2), "metric")?.speed_kmh).toBe(50);
  expect(familiarRow([{ speed_kmh: 30, isHeld: false }], "metric")).toBeUndefined();
});
