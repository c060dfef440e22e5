import { expect, it } from "vitest";
import { atPath, isAtOrBelow, keysOf, numbersIn, withPath } from "../../../shared/job/path.ts";

const document = { packs: [{ name: "a", mass_kg: 80 }, { name: "b" }], title: "one" };

it("gets what stands at a path, and nothing where it leads nowhere", () => {
  expect(atPath(document, "packs.0.mass_kg")).toBe(80);
  expect(atPath(document, ["packs", 1, "name"])).toBe("b");
  expect(atPath(document, "")).toBe(document);
  expect(atPath(document, "packs.2.name")).toBeUndefined();
  expect(atPath(document, "title.length.x")).toBeUndefined();
  expect(atPath(document, "packs.0.toString")).toBeUndefined();
});

it("sets one value and shares all others", () => {
  const after = withPath(document, "packs.1.mass_kg", 90);
  expect(after.packs[1]).toEqual({ name: "b", mass_kg: 90 });
  expect(after.packs[0]).toBe(document.packs[0]);
  expect(document.packs[1]).toEqual({ name: "b" });
});

it("makes the groups on the way and takes out a key that is set to nothing", () => {
  expect(withPath({}, "vehicle.tyres.name", "x")).toEqual({ vehicle: { tyres: { name: "x" } } });
  expect(withPath({ a: { b: 1, c: 2 } }, "a.b", undefined)).toEqual({ a: { c: 2 } });
});

it("lists every number with its path", () => {
  expect(numbersIn({ a: 1, b: [2, { c: 3 }], d: "4" })).toEqual([
    { path: "a", value: 1 },
    { path: "b.0", value: 2 },
    { path: "b.1.c", value: 3 },
  ]);
});

it("knows a path below another by whole keys", () => {
  expect(isAtOrBelow("packs.1.name", "packs.1")).toBe(true);
  expect(isAtOrBelow("packs.10", "packs.1")).toBe(false);
  expect(keysOf("")).toEqual([]);
});
