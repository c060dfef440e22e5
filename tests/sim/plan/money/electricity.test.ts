import { describe, expect, it } from "vitest";
import type { ChargeRow } from "../../../../sim/plan/charging/chargeRow.ts";
import { electricityAt } from "../../../../sim/plan/money/electricity.ts";
import { rowOf, tenKwh } from "./clientsByHand.ts";

// The pack of 10 kWh takes 100 Wh/km from its cells: a day of 100 km stores 10 kWh, a winter's day twice as much.
const job = { usualDay_km: 100, allowance: { winter_ratio: 2, aged_frac: 0.75 } };
const { usualDay } = rowOf(0.15);
if (!usualDay) throw new Error("the row by hand has a day");

function at(changes: Partial<ChargeRow> = {}, of = job) {
  return electricityAt({ ...rowOf(0.15), ...changes }, tenKwh, of);
}

describe("electricity of a kilometre", () => {
  it("lies between the usual day's and the mean of it and the winter's", () => {
    // 15 kWh from the wall for 100 km; in winter 32 kWh for the same 100 km. Half of the days: 23.5.
    const winterDay = { ...usualDay, stored_kWh: 20, wall_kWh: 32, cost: 6.4 };
    const found = at({ winterDay });
    expect(found?.supply).toBe("Home");
    expect(found?.wall_kWhpkm).toEqual({
      low: expect.closeTo(0.15, 9),
      high: expect.closeTo(0.235, 9),
      value: expect.closeTo(0.1925, 9),
    });
    // 3 and 6.40 for 100 km.
    expect(found?.costPerKm).toEqual({
      low: expect.closeTo(0.03, 9),
      high: expect.closeTo(0.047, 9),
      value: expect.closeTo(0.0385, 9),
    });
  });
  it("of a winter's day that takes more than the pack holds is at the rate of the whole pack", () => {
    // The pack of 10 kWh is filled by 16 kWh; the 20 kWh of such a day take 32.
    expect(at({ winterDay: { ...usualDay, wall_kWh: 16 } })?.wall_kWhpkm.high).toBeCloseTo(0.235, 9);
  });
  it("costs nothing known where one of the days has no price", () => {
    const { cost: _, ...unpriced } = usualDay;
    expect(at({ usualDay: unpriced })).not.toHaveProperty("costPerKm");
    expect(at({ winterDay: unpriced })).not.toHaveProperty("costPerKm");
    expect(at({ winterDay: unpriced })?.wall_kWhpkm.low).toBeCloseTo(0.15, 9);
  });
  it("is not known of a car that is not charged there, usually or in winter, or does not drive", () => {
    const { usualDay: _, ...noDay } = rowOf(0.15);
    const { winterDay: __, ...noWinter } = rowOf(0.15);
    expect(electricityAt(noDay, tenKwh, job)).toBeUndefined();
    expect(electricityAt(noWinter, tenKwh, job)).toBeUndefined();
    expect(electricityAt(rowOf(0.15), { ...tenKwh, distance_km: 0 }, job)).toBeUndefined();
  });
});
