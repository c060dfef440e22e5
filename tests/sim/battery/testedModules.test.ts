import { describe, expect, it } from "vitest";
import { C_PER_AH } from "../../../shared/units.ts";
import { preparePack } from "../../../sim/battery/preparePack.ts";
import { weakest_Ah } from "../../../sim/battery/testedModules.ts";
import { demoJob } from "../../support/demoJob.ts";

describe("modules that were tested one by one", () => {
  const tested = [36, 40, 31, 38, 39, 28].map((capacity_Ah) => ({ capacity_Ah }));
  it("are used from the best down, and hold what the weakest used holds", () => {
    const of = (modules: number) => weakest_Ah({ capacity_Ah: 45, tested }, modules);
    expect([1, 2, 3, 4, 5, 6].map(of)).toEqual([40, 39, 38, 36, 31, 28]);
    // More than were tested: none is better than the weakest known.
    expect(of(9)).toBe(28);
  });
  it("are as their datasheet has them where none was tested", () => {
    expect(weakest_Ah({ capacity_Ah: 45 }, 12)).toBe(45);
  });
  it("make the pack: strings side by side times the weakest module", () => {
    const { module, packs } = demoJob(0);
    const pack = { ...packs[0], seriesModules: 2, parallelModules: 2 };
    const { capacity_C } = preparePack(pack, { ...module, tested });
    expect(capacity_C).toBeCloseTo(2 * 36 * C_PER_AH, 9);
  });
});
