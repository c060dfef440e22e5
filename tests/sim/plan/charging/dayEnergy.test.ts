import { describe, expect, it } from "vitest";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { chargeBefore_frac, perMetre_J } from "../../../../sim/plan/charging/dayEnergy.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { straightPack } from "../../../support/chargeable.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

describe("what a metre takes of the cells", () => {
  const taken = (total: number, distance_km: number) => {
    const { ledger_Wh } = inventedCandidate(10);
    return perMetre_J({ ledger_Wh: { ...ledger_Wh, total }, distance_km });
  };
  it("is the energy of the drive over its length", () => {
    // 500 Wh on 5 km: 360 J a metre.
    expect(taken(500, 5)).toBeCloseTo(360, 12);
    expect(taken(0.5, 0.5)).toBeCloseTo(3.6, 12);
  });
  it("is nothing for a car that does not move or gains on the way", () => {
    expect(taken(500, 0)).toBeUndefined();
    expect(taken(0, 5)).toBeUndefined();
    expect(taken(-20, 5)).toBeUndefined();
  });
});

describe("the charge before an energy is put back", () => {
  // From 40 V empty to 80 V full over 216 000 C; 90 % to 20 % used.
  const job = bareJob({ ...straightPack, pack: { ceiling_frac: 0.9, floor_frac: 0.2 } });
  const pack = preparePack(job.packs[0], job.module);
  /** Energy from a charge up to the ceiling: the mean voltage times the charge. */
  const above_J = (from_frac: number) => (40 + 20 * (from_frac + 0.9)) * (0.9 - from_frac) * 216_000;

  it("is that from which the energy fills the pack", () => {
    for (const from_frac of [0.3, 0.55, 0.899]) {
      // Straight within the last of 512 pieces: off by at most an eighth of the voltage's change over a piece of the piece.
      expect(chargeBefore_frac(pack, above_J(from_frac))).toBeCloseTo(from_frac, 6);
    }
    expect(chargeBefore_frac(pack, 0)).toBe(0.9);
  });
  it("is the floor where the pack does not hold so much", () => {
    expect(chargeBefore_frac(pack, above_J(0.2) + 1)).toBe(0.2);
    expect(chargeBefore_frac(pack, 1e12)).toBe(0.2);
    expect(chargeBefore_frac(pack, above_J(0.2) - 100)).toBeGreaterThan(0.2);
  });
});
