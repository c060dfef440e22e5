import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { externaliseLists, inlineLists, listKeys } from "../../../../web/store/database/externalLists.ts";
import { inventedJob, withRecordedRoad } from "../../../support/inventedJob.ts";

describe("long lists taken out of a job", () => {
  it("come back in their places bit for bit", () => {
    const odd = [...Array.from({ length: 300 }, (_, i) => i / 7), -0, 5e-324, Number.MAX_VALUE];
    const document = { a: [{ odd }, odd.slice(1)], b: odd.slice(0, 10), text: "x" };
    const external = externaliseLists(document);
    expect(external.lists.size).toBe(2);
    expect(inlineLists(external)).toEqual(document);
    expect(JSON.stringify(external.frame).length).toBeLessThan(500);
  });

  it("are the same for the same numbers, so that they are stored once", () => {
    const job = withRecordedRoad(inventedJob(), 300);
    const again = withRecordedRoad(inventedJob("Other"), 300);
    expect([...externaliseLists(again).lists.keys()]).toEqual([...externaliseLists(job).lists.keys()]);
    expect([...listKeys(externaliseLists(job).frame)]).toEqual([...externaliseLists(job).lists.keys()]);
  });

  it("get another key for any change of one number or the order", () => {
    const base = Array.from({ length: 256 }, (_, i) => i * 1.1);
    const keys = new Set([...externaliseLists(base).lists.keys()]);
    fc.assert(
      fc.property(fc.nat(255), fc.double({ noNaN: true, noDefaultInfinity: true }), (i, value) => {
        const changed = base.with(i, value);
        expect(keys.has([...externaliseLists(changed).lists.keys()][0]!)).toBe(Object.is(value, base[i]));
      }),
      { seed: 3, numRuns: 500 },
    );
    const swapped = base.with(3, base[4]!).with(4, base[3]!);
    expect(keys.has([...externaliseLists(swapped).lists.keys()][0]!)).toBe(false);
  });

  it("are missed by name", () => {
    const { frame } = externaliseLists(withRecordedRoad(inventedJob(), 300));
    expect(() => inlineLists({ frame, lists: new Map() })).toThrow("stored list 300-");
  });

  it("leave lists with anything but finite numbers where they are", () => {
    const document = { texts: Array.from({ length: 300 }, String), gap: Array.from({ length: 300 }, () => null) };
    expect(externaliseLists(document)).toEqual({ frame: document, lists: new Map() });
  });
});
