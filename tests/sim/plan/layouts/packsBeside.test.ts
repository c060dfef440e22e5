import { describe, expect, it } from "vitest";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { layoutPack } from "../../../../sim/plan/layouts/layoutPack.ts";
import { layoutsOf } from "../../../../sim/plan/layouts/layoutsOf.ts";
import { packsBeside } from "../../../../sim/plan/layouts/packsBeside.ts";
import { smallestPack } from "../../../../sim/plan/layouts/smallestPack.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const van = demoJob(1);
const trace = roadTrace(drivenRoad(van), cycleTexts);
const found = smallestPack(van, trace, layoutsOf(van, trace));
const besideOf = (packs: Job["packs"]) => packsBeside({ ...van, packs }, trace, found);
const plain = van.packs.map(({ isAskedFor: _asked, ...pack }) => pack);

describe("packs beside the smallest", () => {
  it("are the smallest with its neighbours where none was asked for, by their energy", () => {
    const beside = besideOf(plain);
    expect(beside.map(({ roles, pack }) => [...roles, pack.name])).toEqual([
      ["next smaller", found.nextSmaller?.pack.name],
      ["smallest", found.smallest?.pack.name],
      ["next larger", found.nextLarger?.pack.name],
    ]);
    const { left_km, mass_kg, range_km } = beside[1];
    expect(left_km).toBe(found.smallest?.left_km?.low);
    expect(mass_kg).toBe(found.smallest?.candidate.pack.mass_kg);
    expect(range_km).toBe(found.smallest?.candidate.range_km);
  });

  it("have each that was asked for among them, driven and judged as they are", () => {
    const asked = { ...layoutPack(van, 9, 1), name: "what he wants", isAskedFor: true };
    const beside = besideOf([...plain, asked]);
    expect(beside[0]).toMatchObject({ roles: ["asked for"], meets: false, pack: { name: "what he wants" } });
    expect(beside).toHaveLength(4);
  });

  it("are one where what was asked for is the smallest under another name", () => {
    const pack = found.smallest?.pack ?? plain[0];
    const beside = besideOf([...plain, { ...pack, name: "his own", isAskedFor: true }]);
    expect(beside).toHaveLength(3);
    expect(beside[1].roles).toEqual(["smallest", "asked for"]);
  });

  it("cost what the job says of cells, and nothing is said where it says nothing", () => {
    const { costs, ...unpriced } = van;
    const [{ cost, pack, nominal_kWh }] = besideOf(plain);
    const price = pack.cellPrice ?? costs?.cells;
    const count = { module: pack.seriesModules * pack.parallelModules, kWh: nominal_kWh, pack: 1 }[
      price?.per ?? "pack"
    ];
    expect(cost?.low).toBeCloseTo((price?.price.low ?? Number.NaN) * count, 6);
    const without = plain.map(({ cellPrice: _price, ...each }) => each);
    const bare = smallestPack(
      { ...unpriced, packs: without },
      trace,
      layoutsOf({ ...unpriced, packs: without }, trace),
    );
    for (const row of packsBeside({ ...unpriced, packs: without }, trace, bare)) expect(row.cost).toBeUndefined();
  });
});
