import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { layoutPack, modulesMost } from "../../../../sim/plan/layouts/layoutPack.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
const [like] = job.packs;
const packs = (...changes: readonly Partial<Job["packs"][number]>[]) => changes.map((each) => ({ ...like, ...each }));
const whole = { energy_kWh: 10, nominal_V: 100, mass_kgpkWh: 8 };

describe("a pack of so many modules", () => {
  it("is named as the trade does, with window, boxes and leads of the first that is made of modules", () => {
    const of = packs({ whole, floor_frac: 0.3 }, { floor_frac: 0.12, leads_mohm: 7 });
    const found = layoutPack({ packs: of }, 5, 3);
    expect(found).toEqual({ ...of[1], name: "5s3p", seriesModules: 5, parallelModules: 3 });
    expect(layoutPack({ packs: packs({ whole }) }, 2, 1)).not.toHaveProperty("whole");
  });
  it("keeps a price by the module or the kWh, and not that of another pack as a whole", () => {
    const price = (per: "module" | "kWh" | "pack") =>
      layoutPack({ packs: packs({ cellPrice: { per, price: { low: 90 } } }) }, 5, 3).cellPrice?.per;
    expect([price("module"), price("kWh"), price("pack")]).toEqual(["module", "kWh", undefined]);
  });
});

describe("the most modules looked at", () => {
  const most = (counts: readonly (readonly [series: number, parallel: number])[], asked?: number) =>
    modulesMost({
      packs: packs(...counts.map(([seriesModules, parallelModules]) => ({ seriesModules, parallelModules }))),
      sizing: { ...job.sizing, ...(asked !== undefined && { modulesMost: asked }) },
    });
  it("are as asked, or twice those of the largest pack, 24 at least and 400 at most", () => {
    expect(most([[8, 2]], 7)).toBe(7);
    expect(
      most([
        [5, 2],
        [8, 2],
        [3, 3],
      ]),
    ).toBe(32);
    expect(most([[3, 2]])).toBe(24);
    expect(most([[13, 1]])).toBe(26);
    expect(most([[100, 3]])).toBe(400);
  });
});
