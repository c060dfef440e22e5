import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { homeward } from "../../../sim/step/model.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { run } from "../../../sim/step/run.ts";
import { copyTotals, type Totals } from "../../../sim/step/totals.ts";
import { runVariants } from "../../../sim/step/variants.ts";
import { arbitraryJob, arbitraryTrace } from "../../support/arbitraryJob.ts";
import { fixedly } from "../../support/fixedly.ts";

/** Every figure of some totals, by name. */
function figures({ ledger, limited_s, ...rest }: Totals): [string, number][] {
  return [...Object.entries(ledger), ...Object.entries(rest), ...Object.entries(limited_s)].map(([key, value]) => [
    key,
    Number(value),
  ]);
}

describe("many variants in one go", () => {
  it("have the totals of single runs, to 1e-9 of each figure, whatever was driven before them in the same memory", () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.array(arbitraryJob, { minLength: 2, maxLength: 5 }), arbitraryTrace, (jobs, trace) => {
        const models = jobs.map((job) => prepare(job, job.packs[0]));
        runVariants(models, trace, (totals, endSoc_frac, i) => {
          const alone = run(models[i], trace);
          expect(Math.abs(endSoc_frac - alone.endSoc_frac)).toBeLessThanOrEqual(1e-9);
          const single = new Map(figures(alone.totals));
          for (const [key, value] of figures(totals)) {
            const other = single.get(key) ?? Number.NaN;
            // Infinite where the car never drew from its pack: the lowest voltage of nothing.
            if (value === other) continue;
            expect(Math.abs(value - other), key).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
          }
          compared++;
        });
      }),
      fixedly(70),
    );
    expect(compared).toBeGreaterThan(150);
  });

  it("are handed over in order, in memory that is used again; of none nothing is driven", () => {
    fc.assert(
      fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
        const model = prepare(job, job.packs[0]);
        const seen: Totals[] = [];
        const order: number[] = [];
        runVariants([model, model, model], trace, (totals, _, i) => {
          seen.push(totals);
          order.push(i);
        });
        expect(order).toEqual([0, 1, 2]);
        expect(new Set(seen).size).toBe(1);
        expect(copyTotals(seen[0])).toEqual(run(model, trace).totals);
        runVariants([], trace, () => expect.unreachable());
      }),
      fixedly(5),
    );
  });
});

describe("a car that is prepared like another", () => {
  it("is the car that it would be alone, and shares the tables that the two have in common", () => {
    fc.assert(
      fc.property(arbitraryJob, arbitraryJob, fc.integer({ min: 0, max: 7 }), (one, other, which) => {
        const [pack] = one.packs;
        const first = { job: one, pack, model: prepare(one, pack) };
        const parts = [
          { ...one },
          { ...one, vehicle: other.vehicle },
          { ...one, motor: { ...one.motor, loss: other.motor.loss } },
          { ...one, module: { ...one.module, capacity_Ah: 1.1 * one.module.capacity_Ah } },
          { ...one, module: { ...one.module, openCircuit: other.module.openCircuit } },
          { ...one, module: { ...one.module, resistance: other.module.resistance } },
          { ...one, module: { ...one.module, seriesCells: one.module.seriesCells + 1 } },
          other,
        ];
        const job = parts[which];
        const packs = [pack, { ...pack, parallelModules: pack.parallelModules + 1 }, other.packs[0]];
        for (const each of packs) expect(prepare(job, each, first)).toEqual(prepare(job, each));
      }),
      fixedly(60),
    );
  });

  it("takes a pack that is given whole as it is, and makes it anew where its module is another", () => {
    const [job] = fc.sample(arbitraryJob, { numRuns: 1, seed: 1 });
    const pack = { ...job.packs[0], whole: { energy_kWh: 12, nominal_V: 120, mass_kgpkWh: 9 } };
    const first = { job, pack, model: prepare(job, pack) };
    expect(prepare(job, pack, first).pack).toBe(first.model.pack);
    const stiffer = { ...job, module: { ...job.module, charging_ratio: 2 } };
    expect(prepare(stiffer, pack, first)).toEqual(prepare(stiffer, pack));
  });
});

it("turns a car round with nothing else about it changed than the sign of the wind", () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const model = prepare(job, job.packs[0]);
      const { road } = model;
      expect(homeward(model)).toEqual({ ...model, road: { ...road, headWind_mps: -road.headWind_mps } });
    }),
    fixedly(10),
  );
});
