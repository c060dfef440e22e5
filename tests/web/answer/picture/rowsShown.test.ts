import { describe, expect, it } from "vitest";
import { rowsShown } from "../../../../web/answer/picture/rowsShown.ts";
import { inventedUse } from "../../../support/inventedCandidate.ts";
import { answered } from "../answeredByHand.ts";

describe("the rows of the picture", () => {
  it("are all packs by size where there are few", () => {
    expect(rowsShown(answered([6, 3, 5]), undefined)).toEqual([1, 2, 0]);
  });

  it("are four of many: one too small, the recommended, the one that is enough, the largest", () => {
    // 4.2 is only just enough, 5 with the whole band.
    expect(rowsShown(answered([1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12]), undefined)).toEqual([2, 3, 4, 11]);
  });

  it("hold the one that the client asked for", () => {
    const [pack] = inventedUse().packs;
    const sizes = [1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12];
    const packs = sizes.map((size) => ({ ...pack, isAskedFor: size === 9 }));
    expect(rowsShown(answered(sizes, undefined, { packs }), undefined)).toEqual([2, 3, 4, 8]);
  });

  it("always hold the chosen one", () => {
    expect(rowsShown(answered([1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12]), 0)).toContain(0);
  });

  it("hold packs also where none is enough, and where none may be used", () => {
    expect(rowsShown(answered([1, 2]), undefined)).toEqual([0, 1]);
    const { controller } = inventedUse();
    expect(rowsShown(answered([1, 2], 0, { controller: { ...controller, max_V: 1 } }), undefined)).toEqual([0, 1]);
  });
});
