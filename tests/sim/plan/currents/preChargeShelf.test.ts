import { describe, expect, it } from "vitest";
import { preChargeShelf } from "../../../../sim/plan/currents/preChargeShelf.ts";

const shelf = (source_V: number, capacitance_uF: number, changes: Partial<Parameters<typeof preChargeShelf>[0]> = {}) =>
  preChargeShelf({ source_V, capacitance_uF, ...changes });
const LN20 = Math.log(20);

describe("a resistor from the shelf", () => {
  it("is rated by a tenth of its peak, the next usual size up", () => {
    // A tenth of 120²/R: 144, 96, 65.5, 43.6, 30.6, 21.2, 14.4, 9.6, 6.5, 4.4 W and less.
    const ratings = shelf(120, 1000).rows.map(({ resistance_ohm, rating_W }) => [resistance_ohm, rating_W]);
    expect(ratings).toEqual([
      [10, 150],
      [15, 100],
      [22, 100],
      [33, 50],
      [47, 50],
      [68, 25],
      [100, 15],
      [150, 10],
      [220, 10],
      [330, 5],
      ...[470, 680, 1000].map((resistance_ohm) => [resistance_ohm, 5]),
    ]);
  });
  it("beyond the sizes is rated in whole hundreds", () => {
    // A tenth of 240²/10: 576 W. 200²/10: 400, 170²/10: 289, 150²/15: 150 W.
    expect(shelf(240, 1000).rows[0].rating_W).toBe(600);
    expect(shelf(200, 1000).rows[0].rating_W).toBe(500);
    expect(shelf(170, 1000).rows[0].rating_W).toBe(300);
    expect(shelf(141, 1000).rows[0].rating_W).toBe(200);
    expect(shelf(150, 1000).rows[1].rating_W).toBe(150);
  });
  it("is the one whose time is, as a ratio, nearest to a second", () => {
    // R C ln 20 of 1 mF: 330 ohm 0.989 s; of 10 mF: 33 ohm; of 0.1 mF the largest, 1000 ohm, 0.3 s; of 100 mF the least, 10 ohm, 3 s.
    const chosen = (capacitance_uF: number) => shelf(120, capacitance_uF).chosen?.resistance_ohm;
    expect([chosen(1000), chosen(10_000), chosen(100), chosen(100_000)]).toEqual([330, 33, 1000, 10]);
    // 4 mF: 68 ohm 0.815 s is a ratio of 1.227 away, 100 ohm 1.198 s one of 1.198.
    expect(chosen(4000)).toBe(100);
  });
});

describe("what is fitted, drawn and assumed", () => {
  it("is tried as it is fitted", () => {
    const { chosen, isFitted, rows } = shelf(120, 1000, { fitted_ohm: 500 });
    expect(isFitted).toBe(true);
    expect(chosen?.resistance_ohm).toBe(500);
    expect(chosen?.time_s).toBeCloseTo(0.5 * LN20, 9);
    expect(rows).toHaveLength(13);
    expect(shelf(120, 1000).isFitted).toBe(false);
  });
  it("is given up after three times as long, and no sooner than a second", () => {
    expect(shelf(120, 1000, { fitted_ohm: 500 }).timeout_s).toBeCloseTo(1.5 * LN20, 9);
    expect(shelf(120, 1000, { fitted_ohm: 10 }).timeout_s).toBe(1);
  });
  it("is 1500 µF where nobody has looked", () => {
    expect(preChargeShelf({ source_V: 120 })).toMatchObject({ capacitance_uF: 1500, isCapacitanceAssumed: true });
    expect(preChargeShelf({ source_V: 120 }).chosen?.time_s).toBeCloseTo(220 * 1.5e-3 * LN20, 9);
    expect(shelf(120, 1000).isCapacitanceAssumed).toBe(false);
  });
  it("has beside a load what it would be without it", () => {
    expect(shelf(120, 1000)).not.toHaveProperty("withoutLoad");
    expect(shelf(120, 1000, { load_W: 0.5, loadWakes_V: 60 }).withoutLoad?.resistance_ohm).toBe(330);
    const stuck = shelf(120, 1000, { load_W: 400, loadWakes_V: 60 });
    expect(stuck).not.toHaveProperty("chosen");
    expect(stuck).not.toHaveProperty("timeout_s");
    expect(stuck.withoutLoad?.time_s).toBeCloseTo(0.33 * LN20, 9);
    expect(stuck.rows[0].settles_V).toBeLessThan(0.95 * 120);
    expect(shelf(120, 1000, { load_W: 400, loadWakes_V: 60, fitted_ohm: 47 }).withoutLoad?.time_s).toBeCloseTo(
      0.047 * LN20,
      9,
    );
  });
  it("has a load that draws at any voltage where no other is said: it never gets off the ground", () => {
    expect(shelf(120, 1000, { load_W: 1 }).rows[0].settles_V).toBe(0);
  });
});
