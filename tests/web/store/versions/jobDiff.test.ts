import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sameDocument } from "../../../../web/store/database/sameDocument.ts";
import { jobDiff } from "../../../../web/store/versions/jobDiff.ts";
import { inventedJob, withRecordedRoad } from "../../../support/inventedJob.ts";

describe("differences of two jobs", () => {
  it("are none between equal jobs", () => {
    expect(jobDiff(inventedJob(), inventedJob())).toEqual([]);
  });

  it("name path, old and new value", () => {
    expect(jobDiff(inventedJob("S", 150), inventedJob("S", 175))).toEqual([
      { kind: "changed", path: "vehicle.load_kg", place: "vehicle › load_kg", before: 150, after: 175 },
    ]);
  });

  it("tell what was added and what was taken away", () => {
    const before = inventedJob();
    const { use: _, ...rest } = before;
    expect(jobDiff(before, { ...rest, longestDay_km: 90 })).toEqual([
      { kind: "removed", path: "use", place: "use", before: "school, shop, station" },
      { kind: "added", path: "longestDay_km", place: "longestDay_km", after: 90 },
    ]);
  });

  it("are one where a pack is taken out from the front, not one for each pack behind it", () => {
    const before = inventedJob();
    const after = { ...before, packs: before.packs.slice(1) };
    expect(jobDiff(before, after)).toMatchObject([{ kind: "removed", path: "packs.0", place: "packs › Small" }]);
  });

  it("follow a pack by its name when the order changes", () => {
    const before = inventedJob();
    const [small, large] = before.packs;
    const after = { ...before, packs: [large!, { ...small!, seriesModules: 9 }] };
    expect(jobDiff(before, after)).toEqual([
      { kind: "changed", path: "packs.1.seriesModules", place: "packs › Small › seriesModules", before: 8, after: 9 },
    ]);
  });

  it("see a renamed pack as the same pack with another name", () => {
    const before = inventedJob();
    const after = { ...before, packs: [{ ...before.packs[0]!, name: "Tiny" }, before.packs[1]!] };
    expect(jobDiff(before, after)).toMatchObject([{ path: "packs.0.name", before: "Small", after: "Tiny" }]);
  });

  it("take a recorded road's speeds as one value", () => {
    const before = withRecordedRoad(inventedJob(), 500, 50);
    const paths = jobDiff(before, withRecordedRoad(inventedJob(), 500, 60)).map(({ path }) => path);
    expect(paths).toEqual(["roads.1.speed_kmh"]);
  });

  it("are empty exactly where the documents are the same, for any documents", () => {
    const thing = fc.record({ name: fc.constantFrom("a", "b", "c"), value: fc.integer({ min: 0, max: 2 }) });
    const document = fc.record({ list: fc.array(thing, { maxLength: 4 }), plain: fc.array(fc.integer({ max: 1 })) });
    let [same, different] = [0, 0];
    fc.assert(
      fc.property(document, document, fc.boolean(), (a, other, isCopy) => {
        const b = isCopy ? structuredClone(a) : other;
        const isSame = sameDocument(a, b);
        if (isSame) same += 1;
        else different += 1;
        const isReordered = sameDocument([...a.list].sort(byName), [...b.list].sort(byName));
        const found = jobDiff(a, b);
        if (isSame) expect(found).toEqual([]);
        // The order of named things alone is no difference.
        else if (!sameDocument(a.plain, b.plain) || !isReordered) expect(found.length).toBeGreaterThan(0);
      }),
      { seed: 7, numRuns: 500 },
    );
    expect(same).toBeGreaterThan(100);
    expect(different).toBeGreaterThan(100);
  });
});

function byName(a: { name: string; value: number }, b: { name: string; value: number }): number {
  return a.name.localeCompare(b.name) || a.value - b.value;
}
