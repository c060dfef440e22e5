import { describe, expect, it } from "vitest";
import type { ChargeFigures } from "../../../../sim/plan/charging/chargeRow.ts";
import { chargerSettings } from "../../../../sim/plan/settings/chargerSettings.ts";
import { socketOf } from "../../../support/chargeable.ts";
import { type BasisChanges, basisOf, rowOf } from "./basisByHand.ts";

const row = (key: string, changes: BasisChanges = {}) => rowOf(chargerSettings(basisOf(changes)), key);
const charge = (time_h: number): ChargeFigures => ({
  time_h,
  taper_h: 0,
  wall_kWh: 1,
  stored_kWh: 1,
  course: { time_s: [], soc_frac: [], wall_J: [], current_A: [] },
});

describe("the charger's volts", () => {
  it("are the cells' limit at most, and what the pack rests at at its ceiling", () => {
    // At nine tenths each cell rests at 2.8 + 0.9 x 0.6 V = 3.34 V: 106.9 V.
    expect(row("bulkVolts")).toEqual([
      "117 V at most; 90 % rests at 107 V",
      "32 cells at 3.65 V; the cells' open-circuit curve",
      "",
    ]);
    expect(row("chargerCells").slice(0, 2)).toEqual(["32 cells", "8 modules of 4"]);
  });
  it("are warned of where the charger ends below a full pack", () => {
    expect(row("bulkVolts", { charger: { max_V: 116.8 } })[2]).toBe("");
    expect(row("bulkVolts", { charger: { max_V: 110 } })[2]).toBe(
      "The charger ends at 110 V: this pack is never charged full.",
    );
  });
});

describe("the charger's amps", () => {
  it("are what the cells take for hours, or the charger's own where that is less", () => {
    expect(row("chargeCurrent").slice(0, 2)).toEqual(["100 A at most", "what the cells take for hours"]);
    expect(row("chargeCurrent", { charger: { maxDc_A: 40 } }).slice(0, 2)).toEqual([
      "40 A at most",
      "the charger's own",
    ]);
    expect(row("chargeCurrent", { charger: { maxDc_A: 140 } }).slice(0, 2)).toEqual([
      "100 A at most",
      "what the cells take for hours",
    ]);
  });
  it("taper to the job's end current, or to a twentieth of the ampere-hours", () => {
    expect(row("taperEnd").slice(0, 2)).toEqual(["5 A", "a twentieth of the capacity: common practice, no source"]);
    expect(row("taperEnd", { charger: { tail_A: 3 } }).slice(0, 2)).toEqual(["3 A", "in the job"]);
  });
});

describe("the mains", () => {
  it("are a household socket where the job names no place", () => {
    expect(row("mains").slice(0, 2)).toEqual([
      "10 A at a household socket",
      "no place is in the job: common practice, no source",
    ]);
  });
  it("are each place's, with what to mind of a household socket, and said where it is not charged", () => {
    const supplies = [socketOf(16, { name: "Post" }), socketOf(10, { name: "Garage", kind: "household" })];
    const charges = [{}, { stop: ["It is too low."] }];
    expect(row("mains1", { supplies, charges })).toEqual([
      "16 A",
      "in the job",
      "Circuit, protection and earth by a licensed electrician under the local code.",
    ]);
    const [value, , caution] = row("mains2", { supplies, charges });
    expect(value).toBe("10 A; not charged there");
    expect(caution).toMatch(/^A household socket heats in hours/);
    expect(row("mains1", { supplies })[0]).toBe("16 A");
    const names = chargerSettings(basisOf({ supplies })).map(({ name }) => name);
    expect(names).toContain("Mains current, Garage");
  });
});

describe("the time-out", () => {
  it("is a quarter more than the longest whole charge, in whole hours", () => {
    const charges = [{ emptyToFull: charge(6) }, { emptyToFull: charge(8) }, {}];
    expect(row("chargeTimeout", { charges })[0]).toBe("10 h");
    expect(row("chargeTimeout", { charges: [{ emptyToFull: charge(8.1) }] })[0]).toBe("11 h");
  });
  it("is not known where it is charged nowhere", () => {
    expect(row("chargeTimeout")[0]).toBe("not known: it is charged nowhere");
  });
});
