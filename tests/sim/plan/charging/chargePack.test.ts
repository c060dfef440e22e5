import { describe, expect, it } from "vitest";
import { J_PER_WH, S_PER_H } from "../../../../shared/units.ts";
import { charged, flatPack, socketOf, straightPack } from "../../../support/chargeable.ts";

describe("a charge", () => {
  it("at constant current and then at constant voltage takes the sum of both", () => {
    // 60 Ah x 37/40 at 30 A, then the taper of 540 s x ln 10.
    const { time_s, taper_s, end } = charged(straightPack, socketOf(32), 0);
    expect(end).toBe("full");
    const whole_s = ((60 * 37) / 40 / 30) * S_PER_H + 540 * Math.log(10);
    expect(Math.abs(time_s / whole_s - 1)).toBeLessThan(0.001);
    expect(Math.abs(taper_s / (540 * Math.log(10)) - 1)).toBeLessThan(0.02); // the knee lies inside a step of charge
  });

  it("ends at the ceiling where that comes before the taper", () => {
    const pack = { ...straightPack, pack: { ceiling_frac: 0.9, floor_frac: 0 } };
    const { time_s, taper_s, end_frac } = charged(pack, socketOf(32), 0.1);
    expect(end_frac).toBe(0.9);
    expect(taper_s).toBe(0);
    expect(time_s).toBeCloseTo(((60 * 0.8) / 30) * S_PER_H, 6);
  });

  it("ends when the set voltage is met, where the charger gives less than the tail current anyway", () => {
    // 2 A of 60 Ah: below 3 A from the start; 80 V are met at 79.8 V open-circuit.
    const pack = { ...straightPack, charger: { maxDc_A: 2 } };
    const { end, end_frac, taper_s } = charged(pack, socketOf(32), 0.5);
    expect(end).toBe("full");
    expect(end_frac).toBeCloseTo((79.8 - 40) / 40, 3);
    expect(taper_s).toBe(0);
  });

  it("ends at the charger's own tail current where that is typed", () => {
    const ends = [1.5, 3, 15].map((tail_A) => charged({ ...straightPack, charger: { tail_A } }, socketOf(32), 37 / 40));
    expect(ends.map(({ time_s }) => Math.round(time_s / 54) / 10)).toEqual(
      [20, 10, 2].map((times) => Math.round(10 * Math.log(times)) / 10),
    );
  });

  it("ends when its time is up, on the second", () => {
    const { time_s, end, end_frac } = charged(straightPack, socketOf(32), 0, S_PER_H);
    expect({ time_s, end }).toEqual({ time_s: S_PER_H, end: "time" });
    expect(end_frac).toBeCloseTo(30 / 60, 9);
  });

  it("is none from the ceiling on", () => {
    expect(charged(straightPack, socketOf(32), 1)).toMatchObject({ time_s: 0, wall_J: 0, end: "full", end_frac: 1 });
  });

  it("pays the car's own draw from the wall, for as long as it lasts, and the pack gets less", () => {
    const alone = charged(flatPack(20), socketOf(10), 0);
    const drawn = charged({ ...flatPack(20), charger: { carDraw_W: 230 } }, socketOf(10), 0);
    // A tenth of 2300 W: ten ninths of the time.
    expect(drawn.time_s / alone.time_s).toBeCloseTo(10 / 9, 6);
    expect(drawn.stored_J).toBeCloseTo(alone.stored_J, 3);
    expect((drawn.wall_J - alone.wall_J) / J_PER_WH).toBeCloseTo((230 * drawn.time_s) / S_PER_H, 1);
  });

  it("goes slower where the cells are cold, and warms them by what they lose", () => {
    const at = (pack_degC: number) =>
      charged({ ...straightPack, environment: { temperature_degC: 20, pack_degC } }, socketOf(32), 0, S_PER_H);
    // None at 0 degC, all from 10 degC on: at 5 degC half of 30 A.
    expect(at(5).end_frac).toBeCloseTo(0.5 * at(20).end_frac, 6);
    expect(at(0)).toMatchObject({ end: "stuck", time_s: 0 });
    const heat = { capacity_kJpK: 20, cooling_WpK: 0, derateFrom_degC: 45, derateTo_degC: 60 };
    const pack = { ...straightPack, module: { ...straightPack.module, heat } };
    const warming = charged({ ...pack, environment: { temperature_degC: 20, pack_degC: 5 } }, socketOf(32), 0, S_PER_H);
    expect(warming.end_frac).toBeGreaterThan(at(5).end_frac);
  });

  it("with cells that cool down to their cold limit hardly gets on, and ends", () => {
    const heat = { capacity_kJpK: 20, cooling_WpK: 20, derateFrom_degC: 45, derateTo_degC: 60 };
    const pack = { ...straightPack, module: { ...straightPack.module, heat } };
    const { end, end_frac } = charged(
      { ...pack, environment: { temperature_degC: -10, pack_degC: 2 } },
      socketOf(32),
      0,
    );
    expect(end).toBe("stuck");
    expect(end_frac).toBeLessThan(0.1);
  });

  it("keeps its sums: what the wall gave is never less than what the terminals got, nor that than what is stored", () => {
    const { stored_J, terminal_J, wall_J, course, time_s } = charged(
      { ...straightPack, charger: { efficiency_frac: 0.9, power_kW: 2 } },
      socketOf(10),
      0.1,
    );
    expect(terminal_J).toBeGreaterThan(stored_J);
    expect(wall_J).toBeCloseTo(terminal_J / 0.9, 3);
    expect(course.wall_J.at(-1)).toBe(wall_J);
    expect(course.time_s.at(-1)).toBe(time_s);
    const rises = (values: readonly number[]) => values.every((value, i) => i === 0 || value > values[i - 1]);
    expect([course.time_s, course.soc_frac, course.wall_J].map(rises)).toEqual([true, true, true]);
  });
});
