import { describe, expect, it } from "vitest";
import type { Charger } from "../../../../shared/job/schema/charger.ts";
import { chargerFeed } from "../../../../sim/plan/charging/chargerFeed.ts";
import { socketOf } from "../../../support/chargeable.ts";

const charger: Charger = { name: "any", efficiency_frac: 0.9, power_kW: 3.3 };
const threePhases = socketOf(16, { kind: "threePhase" });

describe("what a charger gives at a supply", () => {
  it("is the supply's power times the efficiency, until the charger gives no more", () => {
    expect(chargerFeed(socketOf(10), charger)).toMatchObject({ power_W: 2070, limit: "supply" });
    expect(chargerFeed(socketOf(32), charger)).toMatchObject({ power_W: 3300, limit: "charger" });
  });

  it("is a third of three phases for a charger of one, and all of them for one that takes three", () => {
    const large = { ...charger, power_kW: 11 };
    expect(chargerFeed(threePhases, large).supply_W).toBe(3680);
    expect(chargerFeed(threePhases, { ...large, isThreePhase: true }).supply_W).toBe(11_040);
    expect(chargerFeed(socketOf(16), { ...large, isThreePhase: true }).supply_W).toBe(3680);
  });

  it("is held to what the charger takes from each phase", () => {
    expect(chargerFeed(socketOf(32), { ...charger, maxAc_A: 8 }).supply_W).toBe(8 * 230);
  });

  it("is what the supply alone gives where the charger's power is not known", () => {
    expect(chargerFeed(socketOf(32), { name: "any", efficiency_frac: 0.9 })).toMatchObject({
      power_W: 6624,
      current_A: Number.POSITIVE_INFINITY,
      limit: "supply",
    });
  });

  describe("with an efficiency by load", () => {
    const byLoad: Charger = {
      ...charger,
      efficiencyByLoad: { load_frac: [0.1, 0.5, 1], efficiency_frac: [0.7, 0.9, 0.95] },
    };

    it("takes from the wall by the load, straight between the points", () => {
      const { wall_W } = chargerFeed(socketOf(32), byLoad);
      expect(wall_W(330)).toBeCloseTo(330 / 0.7, 6);
      expect(wall_W(0.3 * 3300)).toBeCloseTo((0.3 * 3300) / 0.8, 6);
      expect(wall_W(3300)).toBeCloseTo(3300 / 0.95, 6);
      // Level beyond its ends.
      expect(wall_W(100)).toBeCloseTo(100 / 0.7, 6);
      expect(wall_W(5000)).toBeCloseTo(5000 / 0.95, 6);
    });

    it("gives the most for which the supply is enough", () => {
      for (const current_A of [2, 6, 8, 10, 13]) {
        const { power_W, supply_W, wall_W } = chargerFeed(socketOf(current_A), byLoad);
        expect(wall_W(power_W)).toBeCloseTo(supply_W, 6);
      }
    });
  });
});
