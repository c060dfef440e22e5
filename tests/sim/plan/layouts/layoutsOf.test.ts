import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { packFigures } from "../../../../sim/plan/drive/packFigures.ts";
import { layoutRows } from "../../../../sim/plan/layouts/layoutRows.ts";
import { layoutsOf } from "../../../../sim/plan/layouts/layoutsOf.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const road = traceOf([
  [0, 0],
  [13, 60],
  [90, 60],
  [105, 0],
]);

/** The first demo with what is changed in it, and each of its layouts as 5s3p with its reason, if any. */
function reasons(change: (job: Job) => Job = (job) => job): Map<string, string | undefined> {
  const { all } = layoutsOf(change(demoJob(0)), road);
  return new Map(all.map(({ pack, out }) => [pack.name, out && messageIn(out.reason, "metric")]));
}

describe("layouts of a module", () => {
  it("are all pairs of modules in series and strings up to the number asked for, once each", () => {
    for (const modulesMost of [1, 7, 30]) {
      const job = demoJob(0);
      const { all } = layoutsOf({ ...job, sizing: { ...job.sizing, modulesMost } }, road);
      const pairs = Array.from({ length: modulesMost }, (_, i) => Math.floor(modulesMost / (i + 1)));
      expect(all.length).toBe(pairs.reduce((sum, count) => sum + count, 0));
      expect(new Set(all.map(({ pack }) => pack.name)).size).toBe(all.length);
    }
  });

  it("are held against the road as the heaviest of the job's packs drives it, wherever that stands in their list", () => {
    const job = demoJob(0);
    const [small, large] = [job.packs[0], job.packs[job.packs.length - 1]].map((pack) => ({ ...pack }));
    const roadOf = (packs: Job["packs"]) => layoutsOf({ ...job, packs }, road).road;
    expect(roadOf([small, large])).toEqual(roadOf([large]));
    expect(roadOf([large, small])).toEqual(roadOf([large]));
    expect(roadOf([large])).not.toEqual(roadOf([small]));
    // A pack given whole is as heavy as it says, beside one made of modules.
    const whole = { ...large, whole: { energy_kWh: 10, nominal_V: 110, mass_kgpkWh: 40 } };
    expect(roadOf([large, whole])).toEqual(roadOf([whole]));
    const light = { ...large, whole: { energy_kWh: 10, nominal_V: 110, mass_kgpkWh: 1 } };
    expect(roadOf([light, large])).toEqual(roadOf([large]));
  });

  it("have the figures of the pack as it is driven, whatever the layout", () => {
    for (const which of [0, 1, 2]) {
      const job = demoJob(which);
      for (const { pack, figures } of layoutsOf(job, road).all.filter((_, i) => i % 9 === 0)) {
        const driven = packFigures(pack, job.module, prepare(job, pack).pack);
        expect(figures.full_V).toBeCloseTo(driven.max_V, 9);
        expect(figures.flat_V).toBeCloseTo(driven.min_V, 9);
        expect(figures.nominal_V).toBeCloseTo(driven.nominal_V, 9);
        expect(figures.usable_kWh).toBeCloseTo(driven.usable_kWh, 9);
        expect(figures.mass_kg).toBe(driven.mass_kg);
      }
    }
  });
});

// The demo's module: 6 cells of 2.8 to 4.2 V, 25.2 V full, 16.8 V empty, 22.2 V on average; 150 A for ten seconds, 76 A for good.
// Its controller works from 75 to 140 V: 140/25.2 = 5.6, and 75/22.2 = 3.4.
describe("a layout is ruled out, and stays in the list with the reason,", () => {
  it("where it is above what the controller takes when full, with the most that fit", () => {
    const found = reasons();
    expect(found.get("6s1p")).toBe("6s: 151 V full, the controller stops at 140 V: at most 5");
    expect(found.get("20s1p")).toBe("20s: 504 V full, the controller stops at 140 V: at most 5");
    expect(found.get("5s3p")).toBeUndefined();
  });
  it("where on average it is below what the controller needs, with the fewest that do", () => {
    expect(reasons().get("3s4p")).toBe("3s: 66.5 V on average, the controller needs 75 V: at least 4");
  });
  it("where it sags below that under the road's load when nearly empty, or does not give it at all", () => {
    const low = (job: Job): Job => ({
      ...job,
      charger: { ...job.charger, min_V: 20 },
      accessories: { ...job.accessories, dcdcMin_V: 20 },
    });
    expect(reasons(low).get("4s2p")).toMatch(
      /^4s2p: [67]\d\.?\d? V under this road’s load when nearly empty, the controller/,
    );
    expect(reasons(low).get("4s1p")).toMatch(/^4s1p: (\d+\.?\d? V under|nearly empty, it does not give)/);
  });
  it("at both ends of the charger and of the DC-DC converter", () => {
    const charger = (max_V: number, min_V: number) => (job: Job) => ({
      ...job,
      charger: { ...job.charger, max_V, min_V },
    });
    expect(reasons(charger(110, 20)).get("5s3p")).toBe("5s: 126 V full, the charger goes to 110 V: at most 4");
    expect(reasons(charger(132, 90)).get("5s3p")).toBe("5s: 84 V empty, the charger begins at 90 V: at least 6");
    const converter = (dcdcMax_V: number, dcdcMin_V: number) => (job: Job) => ({
      ...job,
      accessories: { ...job.accessories, dcdcMax_V, dcdcMin_V },
    });
    expect(reasons(converter(100, 20)).get("5s3p")).toBe("5s: 126 V full, the DC-DC converter takes 100 V: at most 3");
    expect(reasons(converter(140, 100)).get("5s3p")).toBe(
      "5s: 84 V empty, the DC-DC converter needs 100 V: at least 6",
    );
  });
  it("where no module at all is low enough", () => {
    const low = reasons((job) => ({ ...job, controller: { ...job.controller, min_V: 5, max_V: 20 } }));
    expect(low.get("1s1p")).toBe("1s: 25.2 V full, the controller stops at 20 V: not even one module fits");
  });
  it("by the current of each string for ten seconds and for good, with the strings that would do", () => {
    expect(reasons().get("5s1p")).toMatch(
      /^5s1p: 1\d\d A in each string over this road, its modules give 76 A for good: at least 2 strings$/,
    );
    const weak = reasons((job) => ({
      ...job,
      module: { ...job.module, discharge: { continuous_A: 20, peak_A: 400, peak_s: 10 } },
    }));
    expect(weak.get("5s2p")).toMatch(
      /^5s2p: \d+\.?\d* A in each string over this road, its modules give 20 A for good: at least [56] strings$/,
    );
    // A peak that lasts for five seconds is none for ten.
    const brief = reasons((job) => ({
      ...job,
      module: { ...job.module, discharge: { continuous_A: 76, peak_A: 400, peak_s: 5 } },
    }));
    expect(brief.get("5s2p")).toMatch(/for ten seconds of this road, its modules give 76 A/);
  });
  it("above the car's plate, above the mass asked for, and beyond the modules that were tested", () => {
    expect(reasons().get("5s8p")).toMatch(/^5s8p: the car weighs 1354 kg as driven, 24 kg more than its plate allows$/);
    const light = reasons((job) => ({ ...job, sizing: { ...job.sizing, packMost_kg: 170 } }));
    expect(light.get("5s4p")).toBeUndefined();
    expect(light.get("5s5p")).toBe("5s5p: 212 kg with its boxes, and at most 170 kg are asked for");
    const tested = Array.from({ length: 17 }, (_, i) => ({ capacity_Ah: 38 - i / 10 }));
    const few = reasons((job) => ({ ...job, module: { ...job.module, tested } }));
    expect(few.get("5s3p")).toBeUndefined();
    expect(few.get("5s4p")).toBe("5s4p: 20 modules, and 17 were tested");
  });
  it("where an axle is above its plate however the boxes are divided", () => {
    const weights = {
      wheelbase_mm: 2400,
      weighed: { front_kg: 500, rear_kg: 453 },
      out: [],
      in: [],
      load: [],
      boxes: [{ name: "tail", place_mm: 2600, share_frac: 1 }],
      plates: { rear_kg: 640 },
    };
    const axle = reasons((job) => ({ ...job, weights }));
    expect(axle.get("5s3p")).toBeUndefined();
    expect(axle.get("5s5p")).toMatch(/^5s5p: rear axle, .*, \d+ kg above what it may carry$/);
    const movable = { ...weights, boxes: [...weights.boxes, { name: "nose", place_mm: 0, share_frac: 0 }] };
    expect(reasons((job) => ({ ...job, weights: movable })).get("5s5p")).toBeUndefined();
  });
});

describe("the list of layouts", () => {
  it("has each that fits, and of those ruled out by the same one line with the reason of the one nearest to fitting", () => {
    const { all } = layoutsOf(demoJob(0), road);
    const rows = layoutRows(all);
    const fitting = all.filter(({ out }) => out === undefined).map(({ pack }) => pack.name);
    expect(rows.filter(({ out }) => out === undefined).map(({ name }) => name)).toEqual(fitting);
    const first = rows[0];
    expect([first.name, first.out && messageIn(first.out.reason, "metric")]).toEqual([
      "1s to 3s",
      "3s: 66.5 V on average, the controller needs 75 V: at least 4",
    ]);
    const last = rows[rows.length - 1];
    expect([last.name, last.out && messageIn(last.out.reason, "metric")]).toEqual([
      "6s to 70s",
      "6s: 151 V full, the controller stops at 140 V: at most 5",
    ]);
    expect(rows.length).toBeLessThan(20);
  });
});
