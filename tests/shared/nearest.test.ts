import { describe, expect, it } from "vitest";
import { nearest } from "../../shared/nearest.ts";

describe("the nearest of known words", () => {
  it.each<[string, string[], string | undefined]>([
    ["uds", ["hwfet", "udds", "us06"], "udds"],
    ["UDDS", ["hwfet", "udds"], "udds"],
    ["wltc-class-3", ["wltc-class-1", "wltc-class-2", "wltc-class-3b"], "wltc-class-3b"],
    ["lode_kg", ["gross_kg", "load_kg"], "load_kg"],
    ["bakery", ["piano-tuner", "bakery-van"], "bakery-van"],
    ["steam", ["piano-tuner", "bakery-van"], undefined],
    ["", ["udds"], undefined],
    ["ab", ["abcdefgh"], undefined],
    ["anything", [], undefined],
  ])("to %j among %j is %j", (word, known, expected) => {
    expect(nearest(word, known)).toBe(expected);
  });

  it("is the first of those that are as near", () => {
    expect(nearest("cat", ["bat", "hat"])).toBe("bat");
  });
});
