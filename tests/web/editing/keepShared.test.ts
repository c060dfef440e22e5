import { describe, expect, it } from "vitest";
import { keepShared } from "../../../web/editing/keepShared.ts";

describe("keepShared", () => {
  it("gives the very same back where all is equal", () => {
    const before = { gears: [{ ratio: 3 }, { ratio: 2 }], name: "box" };
    expect(keepShared(before, { gears: [{ ratio: 3 }, { ratio: 2 }], name: "box" })).toBe(before);
  });

  it("gives new values with the old parts that are equal", () => {
    const before = { gears: [{ ratio: 3 }, { ratio: 2 }], name: "box" };
    const after = keepShared(before, { gears: [{ ratio: 3 }, { ratio: 1 }], name: "box" });
    expect(after).toEqual({ gears: [{ ratio: 3 }, { ratio: 1 }], name: "box" });
    expect(after.gears[0]).toBe(before.gears[0]);
    expect(after).not.toBe(before);
  });

  it("tells a missing part from one that is undefined, and a list from its like", () => {
    expect(keepShared({ a: 1, b: undefined }, { a: 1 })).toEqual({ a: 1 });
    expect(Object.keys(keepShared({ a: 1, b: undefined }, { a: 1 }))).toEqual(["a"]);
    expect(keepShared({ 0: 1 }, [1])).toEqual([1]);
  });

  it.each([
    ["columns", new Float64Array([1, 2]), new Float64Array([1, 2])],
    ["maps", new Map([["a", 1]]), new Map([["a", 2]])],
    ["days", new Date(0), new Date(1)],
  ])("does not look into %s", (_what, before, next) => {
    expect(keepShared({ part: before }, { part: next }).part).toBe(next);
  });
});
