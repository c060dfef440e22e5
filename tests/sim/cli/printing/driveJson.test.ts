import { describe, expect, it } from "vitest";
import { driven, quick, tuner } from "../commands/drivenTuner.ts";

/** Paths of every number in a value, to see that none was lost, and of every null. */
function leaves(value: unknown, path = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, path === "" ? key : `${path}.${key}`));
}

describe("--json", () => {
  it("has the agreed keys for every candidate pack, each a number, and no channels", async () => {
    const found = await driven(quick());
    expect(found.job).toBe("Piano tuner's four-door saloon, harbour town");
    expect(Object.keys(found.trace)).toEqual(
      expect.arrayContaining(["id", "duration_s", "distance_km", "mean_kmh", "max_kmh"]),
    );
    expect(found.candidates.map(({ name }) => name)).toEqual(["8 kWh", "13 kWh", "17 kWh", "21 kWh", "29 kWh"]);
    const number = expect.any(Number);
    for (const candidate of found.candidates) {
      expect(candidate).toMatchObject({
        name: expect.any(String),
        pack: {
          seriesModules: 5,
          parallelModules: number,
          nominal_kWh: number,
          usable_kWh: number,
          mass_kg: number,
          nominal_V: number,
          min_V: number,
          max_V: number,
        },
        testMass_kg: number,
        wheelPositive_Whpkm: number,
        battery_Whpkm: number,
        wall_Whpkm: number,
        range_km: number,
        soc: { start_frac: 0.95, end_frac: number, min_frac: number },
        regen_Wh: number,
        frictionBrake_Wh: number,
        peak: {
          battery_A: number,
          charge_A: number,
          motor_Nm: number,
          motor_kW: number,
          motor_rpm: number,
          min_V: number,
        },
        rmsBattery_A: number,
        missed_km: number,
        reachedFloor: false,
        limited_s: { grip: number, driveline: number, motor: number, controller: number, pack: number, heat: number },
      });
      expect(Object.keys(candidate.ledger_Wh)).toEqual([
        "aero",
        "rolling",
        "climb",
        "speed",
        "driveline",
        "motor",
        "packHeat",
        "accessories",
        "frictionBrake",
        "total",
      ]);
      expect(candidate).not.toHaveProperty("channels");
    }
    expect(leaves(found).filter(([, value]) => value === null)).toEqual([]);
  });

  it("adds up: the ledger to its total, energy at the socket over the charger's efficiency, mass by mass", async () => {
    const { candidates } = await driven(quick(), "--trace", "harbour");
    for (const one of candidates) {
      const { total, ...entries } = one.ledger_Wh;
      const sum_Wh = Object.values(entries).reduce((sum, entry) => sum + entry, 0);
      // Twelve digits are printed of each of nine entries below 1000 Wh.
      expect(Math.abs(sum_Wh - (total ?? 0))).toBeLessThan(1e-8);
      expect(one.wall_Whpkm * 0.9 * one.distance_km).toBeCloseTo(total ?? 0, 6);
      expect(one.testMass_kg).toBeCloseTo(952.544 - 165 + 118 + 110 + (one.pack["mass_kg"] ?? 0), 9);
    }
  });

  it("gives every pack's findings, and the verdict with a reason for each", async () => {
    const { candidates, enough, answer, isComparable } = await driven(tuner, "--trace", "wltc");
    expect(isComparable).toBe(false);
    expect(candidates[0]?.findings.map(({ kind }) => kind)).toContain("traceNotFollowed");
    expect(enough.pack).toBe("17 kWh");
    expect(enough.packs.map(({ isEnough }) => isEnough)).toEqual([false, false, true, true, true]);
    expect(answer).toMatchObject({
      headline: expect.stringMatching(/^17 kWh: (only just|enough)\.$/),
      sentence: expect.stringMatching(/^A usual day of 38 km ends with about \d+ km left/),
      recommended: "17 kWh",
    });
    for (const { verdict, left_km } of answer.packs) {
      const { value, low, high } = left_km.tenYearsWinter;
      expect(low).toBeLessThanOrEqual(value);
      expect(value).toBeLessThanOrEqual(high);
      expect(["not enough", "only just", "enough", "more than enough"]).toContain(verdict);
    }
  });
});
