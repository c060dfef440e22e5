import { describe, expect, it } from "vitest";
import { J_PER_KWH, S_PER_H } from "../../../../shared/units.ts";
import { costOf, nightAt, priceAt_perkWh } from "../../../../sim/plan/charging/tariff.ts";
import { charged, flatPack, socketOf } from "../../../support/chargeable.ts";

const hours = { from: "18:00", to: "6:00" };
const cheap = { from: "23:30", to: "7:30", price_perkWh: 0.1 };
/** 20 kWh at 2 kW: ten hours from the wall, all alike. */
const tenHours = charged(flatPack(20), socketOf(10, { voltage_V: 200 }), 0);

describe("the night", () => {
  it("is the cheap hours while the car stands there", () => {
    expect(nightAt(socketOf(10, { hours, cheap }))).toMatchObject({ hours_h: 6.5, isCheap: true });
    expect(nightAt(socketOf(10, { cheap }))).toMatchObject({ hours_h: 8, isCheap: true });
  });
  it("else the hours in which the car stands there, and nothing where none are known", () => {
    expect(nightAt(socketOf(10, { hours }))).toMatchObject({ hours_h: 12, isCheap: false });
    expect(nightAt(socketOf(10))).toBeUndefined();
  });
});

describe("the cost of a charge", () => {
  it("is its kilowatt-hours at the one price", () => {
    expect(tenHours.time_s / S_PER_H).toBeCloseTo(10, 6);
    expect(costOf(tenHours, socketOf(10, { price_perkWh: 0.3 }))).toBeCloseTo(6, 6);
  });
  it("is at the cheap price in the cheap hours and at the other one after them", () => {
    // Eight of ten hours: 16 kWh at 0.1 and 4 at 0.3.
    expect(costOf(tenHours, socketOf(10, { price_perkWh: 0.3, cheap }))).toBeCloseTo(1.6 + 1.2, 6);
  });
  it("is at the cheap price alone where it fits", () => {
    const four = charged(flatPack(8), socketOf(10, { voltage_V: 200 }), 0);
    expect(four.wall_J / J_PER_KWH).toBeCloseTo(8, 6);
    expect(costOf(four, socketOf(10, { price_perkWh: 0.3, cheap }))).toBeCloseTo(0.8, 6);
  });
  it("is at the one price where the cheap hours have none of their own", () => {
    const { from, to } = cheap;
    expect(costOf(tenHours, socketOf(10, { price_perkWh: 0.3, cheap: { from, to } }))).toBeCloseTo(6, 6);
  });
  it("is not known without a price", () => {
    expect(costOf(tenHours, socketOf(10))).toBeUndefined();
  });
});

describe("the price at a time of day", () => {
  const cheap = { from: "23:30", to: "7:00" };

  it("is the cheap one from its first moment to before its end, over midnight", () => {
    const socket = socketOf(10, { price_perkWh: 0.3, cheap: { ...cheap, price_perkWh: 0.1 } });
    const at = (time_h: number) => priceAt_perkWh(socket, time_h);
    expect([23.4, 23.5, 0, 6.9, 7, 12].map(at)).toEqual([0.3, 0.1, 0.1, 0.1, 0.3, 0.3]);
  });

  it("is the only one that is known, or nothing", () => {
    expect(priceAt_perkWh(socketOf(10, { price_perkWh: 0.3, cheap }), 0)).toBe(0.3);
    expect(priceAt_perkWh(socketOf(10), 0)).toBeUndefined();
  });
});
