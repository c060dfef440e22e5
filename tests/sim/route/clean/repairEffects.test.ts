import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { effectWords, repairEffects } from "../../../../sim/route/clean/repairEffects.ts";
import { madeLog, steadyRows } from "../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const SPEED_mps = 15;
const ABROAD_m = 600;
/** Ten minutes at 15 m/s through a tunnel of 30 s, a position far off in one second, heights that fidget. */
const rows = steadyRows(START_s, 600, SPEED_mps)
  .map((row, i) => ({ ...row, east_m: i === 100 ? ABROAD_m : 0, elevation_m: 100 + 3 * Math.sin(i * 2.1) }))
  .filter((_, i) => i < 300 || i >= 330);
const log = madeLog(rows);
const cleaned = cleanLog(log);

describe("what a repair moved", () => {
  const effects = repairEffects(log, cleaned);

  it("is known of every repair that was done, those apart without which there is no drive", () => {
    expect([...effects.keys()]).toEqual(cleaned.repairs.map(({ kind }) => kind).filter((kind) => kind !== "parked"));
    expect([...effects.keys()]).toEqual(expect.arrayContaining(["tunnel", "wildFix", "heightNoise"]));
  });

  it("of a bridged tunnel is its length, and the energy that driving it takes", () => {
    const { distance_m, energy_frac = Number.NaN } = effects.get("tunnel") ?? { distance_m: Number.NaN };
    expect(distance_m / (31 * SPEED_mps)).toBeCloseTo(1, 1);
    // A steady drive needs as much for each metre: 31 s of the 568 s that were logged.
    expect(energy_frac).toBeGreaterThan(0.02);
    expect(energy_frac).toBeLessThan(0.1);
  });

  it("of heights smoothed is the climb of their noise, less of it", () => {
    expect(effects.get("heightNoise")?.climb_m).toBeLessThan(-500);
    expect(effects.get("heightNoise")?.energy_frac).toBeLessThan(-0.1);
  });
});

describe("in words", () => {
  const none = { distance_m: 0, energy_frac: 0, climb_m: 0 };

  it.each([
    [
      { distance_m: -1234, energy_frac: -0.034, climb_m: -340 },
      "distance -1230 m, energy at the wheel -3 %, climb -340 m",
    ],
    [{ ...none, energy_frac: 0.05 }, "energy at the wheel +5 %"],
    [{ ...none, energy_frac: undefined, climb_m: 12 }, "climb +12 m"],
    [{ distance_m: 4, energy_frac: 0.004, climb_m: 0.4 }, "hardly any distance, energy or climb"],
  ])("is %o", (effect, words) => {
    expect(effectWords(effect, 10_000)).toBe(words);
  });
});
