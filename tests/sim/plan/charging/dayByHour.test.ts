import { describe, expect, it } from "vitest";
import type { Supply } from "../../../../shared/job/schema/supply.ts";
import type { DayRefill } from "../../../../sim/plan/charging/chargeRow.ts";
import { dayByHour } from "../../../../sim/plan/charging/dayByHour.ts";

const socket: Supply = { name: "Shed", kind: "household", mode: "mode2", voltage_V: 230, current_A: 10 };
const at = (changes: Partial<Supply>): Supply => ({ ...socket, ...changes });
/** From 40 to 90 % in so many hours, evenly. */
function refill(hours_h: number): DayRefill {
  const course = { time_s: [0, 3600 * hours_h], soc_frac: [0.4, 0.9], wall_J: [0, 1], current_A: [10, 10] };
  const figures = { time_h: hours_h, taper_h: 0, wall_kWh: 1, stored_kWh: 1, course };
  return { ...figures, from_frac: 0.4, isMoreThanPack: false };
}

describe("a usual day by the clock", () => {
  it("leaves when the hours at the supply end, is home when they begin, and charges from then on", () => {
    const day = dayByHour(at({ hours: { from: "17:30", to: "7:00" } }), refill(5), 0.9, 2);
    expect(day).toEqual({
      hour_h: [7, 8, 16.5, 17.5, 17.5, 22.5, 31],
      soc_frac: [0.9, 0.65, 0.65, 0.4, 0.4, 0.9, 0.9],
      leaves_h: 7,
      home_h: 17.5,
      home_frac: 0.4,
      chargesFrom_h: 17.5,
      isFull: true,
    });
  });

  it("waits for the cheap hours, which may begin on the next day", () => {
    const hours = { from: "18:00", to: "8:00" };
    expect(dayByHour(at({ hours, cheap: { from: "23:30", to: "7:30" } }), refill(5), 0.9, 2).chargesFrom_h).toBe(23.5);
    expect(dayByHour(at({ hours, cheap: { from: "1:00", to: "5:00" } }), refill(5), 0.9, 2).chargesFrom_h).toBe(25);
    expect(dayByHour(at({ hours, cheap: { from: "14:00", to: "20:00" } }), refill(5), 0.9, 2).chargesFrom_h).toBe(18);
  });

  it("is cut where the car leaves before it is full, on the line of the charge", () => {
    const day = dayByHour(at({ hours: { from: "18:00", to: "8:00" } }), refill(20), 0.9, 1);
    expect(day.hour_h.at(-1)).toBe(32);
    expect(day.soc_frac.at(-1)).toBeCloseTo(0.4 + (0.5 * 14) / 20, 12);
    expect(day.isFull).toBe(false);
  });

  it("does not charge where the cheap hours begin only after the car has left again", () => {
    const late = at({ hours: { from: "18:00", to: "8:00" }, cheap: { from: "9:00", to: "17:00" } });
    const day = dayByHour(late, refill(5), 0.9, 2);
    expect(day).toMatchObject({ hour_h: [8, 9, 17, 18, 32], soc_frac: [0.9, 0.65, 0.65, 0.4, 0.4], isFull: false });
    expect(day).not.toHaveProperty("chargesFrom_h");
  });

  it("is full where the charge ends just as the car leaves, and has no hour twice", () => {
    const day = dayByHour(at({ hours: { from: "18:00", to: "8:00" } }), refill(14), 0.9, 2);
    expect(day.isFull).toBe(true);
    expect(day.hour_h).toEqual([8, 9, 17, 18, 18, 32]);
  });

  it("charges at once within cheap hours that go past midnight, wherever in them it comes home", () => {
    const cheap = { from: "22:00", to: "6:00" };
    const from = (hours: { from: string; to: string }) =>
      dayByHour(at({ hours, cheap }), refill(1), 0.9, 1).chargesFrom_h;
    expect(from({ from: "23:00", to: "9:00" })).toBe(23);
    expect(from({ from: "2:00", to: "9:00" })).toBe(26);
    expect(from({ from: "6:00", to: "5:00" })).toBe(22);
    expect(from({ from: "22:00", to: "9:00" })).toBe(22);
  });

  it("comes home later where the driving takes longer than the hours away", () => {
    expect(dayByHour(at({ hours: { from: "18:00", to: "8:00" } }), refill(5), 0.9, 12).home_h).toBe(20);
  });

  it("is a working day where the supply names no hours, and never goes back in time", () => {
    const day = dayByHour(socket, refill(5), 0.9, 2);
    expect([day.leaves_h, day.home_h]).toEqual([8, 18]);
    for (let i = 1; i < day.hour_h.length; i++) expect(day.hour_h[i]).toBeGreaterThanOrEqual(day.hour_h[i - 1]);
  });
});
