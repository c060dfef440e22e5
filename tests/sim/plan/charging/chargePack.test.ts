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

  it("stores what the curve of open-circuit voltage holds between its ends, wherever it ends", () => {
    // From 40 V straight to 80 V over 216 000 C: mean voltage times charge.
    const stored_J = (from: number, to: number) => (40 + 20 * (from + to)) * (to - from) * 216_000;
    const ended = [
      charged(straightPack, socketOf(32), 0.1),
      charged(straightPack, socketOf(32), 0.1, 2000),
      charged({ ...straightPack, charger: { tail_A: 12 } }, socketOf(32), 0.3),
    ];
    expect(new Set(ended.map(({ end_frac }) => end_frac)).size).toBe(3);
    for (const [i, charge] of ended.entries()) {
      const from = [0.1, 0.1, 0.3][i];
      // Out of time inside a step its voltage is that of the whole step: half of a 512th of 40 V.
      expect(Math.abs(charge.stored_J / stored_J(from, charge.end_frac) - 1)).toBeLessThan(i === 1 ? 1e-5 : 1e-9);
    }
  });

  it("loses in 0.1 ohm what its squared current takes: at one current I R of it for each coulomb", () => {
    const { stored_J, terminal_J, end_frac } = charged(straightPack, socketOf(32), 0.1, 5000);
    expect(terminal_J - stored_J).toBeCloseTo(30 * 0.1 * (end_frac - 0.1) * 216_000, 3);
  });

  it("loses on the way to its tail what the falling current takes", () => {
    // From 1 V below the set voltage, 10 A, to 5 A: the mean current over the charge times R.
    const pack = {
      ...straightPack,
      module: { ...straightPack.module, charge: { continuous_A: 99, peak_A: 99, peak_s: 0 } },
    };
    const tail = charged({ ...pack, charger: { tail_A: 5 } }, socketOf(32), 0.975);
    expect(tail.end_frac).toBeCloseTo(0.9875, 9);
    expect(tail.terminal_J - tail.stored_J).toBeCloseTo(7.5 * 0.1 * 0.0125 * 216_000, 6);
    expect(tail.time_s).toBeCloseTo(540 * Math.log(2), 3);
    expect(tail.taper_s).toBe(tail.time_s);
    expect(tail.course.current_A[0]).toBeCloseTo(10, 9);
    expect(tail.course.current_A.at(-1)).toBeCloseTo(5, 9);
  });

  it("goes by steps of charge, each to the next of 512 parts", () => {
    const { course } = charged(straightPack, socketOf(32), 0.1, 4000);
    const inner = course.soc_frac.slice(1, -1).map((soc_frac) => soc_frac * 512);
    // 51.2 is where it begins.
    expect(inner.map((part, i) => part - (52 + i)).every((off) => Math.abs(off) < 1e-9)).toBe(true);
    expect(inner.length).toBeGreaterThan(50);
  });

  it("has a course that begins with nothing at no time, at the charge and the current it begins with", () => {
    const { course } = charged(straightPack, socketOf(32), 0.2, 100);
    const first = Object.fromEntries(Object.entries(course).map(([key, values]) => [key, values[0]]));
    expect(first).toEqual({ time_s: 0, soc_frac: 0.2, wall_J: 0, current_A: 30 });
  });

  it("takes nothing where it has no time", () => {
    expect(charged(straightPack, socketOf(32), 0.2, 0)).toMatchObject({
      time_s: 0,
      taper_s: 0,
      stored_J: 0,
      terminal_J: 0,
      wall_J: 0,
      end: "time",
      end_frac: 0.2,
    });
  });

  it("of a pack that is full by its voltage already is over at once", () => {
    const pack = { ...straightPack, module: { ...straightPack.module, cellMax_V: 3 } };
    expect(charged(pack, socketOf(32), 0.6)).toMatchObject({ time_s: 0, end: "full", end_frac: 0.6 });
  });

  it("warms its cells by what they lose, not by what the leads do", () => {
    // 30 A of which 0.1 ohm lie in the cells: 90 W, for 1000 s into 20 kJ/K: 4.5 K above 40.5 degC, where they begin to take less.
    const heat = { capacity_kJpK: 20, cooling_WpK: 0, derateFrom_degC: 45, derateTo_degC: 60 };
    const pack = {
      ...straightPack,
      module: { ...straightPack.module, heat },
      pack: { ...straightPack.pack, leads_mohm: 50 },
    };
    const day = { environment: { temperature_degC: 20, pack_degC: 40.5 } };
    const { course } = charged({ ...pack, ...day }, socketOf(100), 0, 3000);
    const less = course.current_A.findIndex((current_A) => current_A < 30 - 1e-9);
    expect(Math.abs(course.time_s[less] - 1000)).toBeLessThan(30);
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
