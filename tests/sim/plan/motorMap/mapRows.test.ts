import { describe, expect, it } from "vitest";
import { cellNumber, shownCell, splitRows, wordsOf } from "../../../../sim/plan/motorMap/mapRows.ts";

describe("the lines of a table", () => {
  it("keep their number in the file, their cells trimmed, and leave out those that are empty", () => {
    expect(splitRows("\ufeffa , b\n , \n\n1,2")).toEqual([
      { line: 1, texts: ["a", "b"] },
      { line: 4, texts: ["1", "2"] },
    ]);
  });
  it("have points for decimal commas where commas do not part the columns", () => {
    expect(splitRows("rpm;Nm\n1000;0,85").map(({ texts }) => texts)).toEqual([
      ["rpm", "Nm"],
      ["1000", "0.85"],
    ]);
    expect(splitRows("a;b\n1;97,5 %")[1].texts).toEqual(["1", "97.5 %"]);
    expect(splitRows("a;b\n1;0,855")[1].texts).toEqual(["1", "0.855"]);
  });
  it("keep commas that mark thousands, and those that part columns", () => {
    expect(splitRows("a;b\n1,000;2,500")[1].texts).toEqual(["1,000", "2,500"]);
    expect(splitRows('a,b\n"1,5",2')[1].texts).toEqual(["1,5", "2"]);
  });
});

describe("the number of a cell", () => {
  it.each([
    ["1000", 1000],
    ["7,000", 7000],
    ["1 000 000", 1_000_000],
    ["−5", -5],
    ["85 %", 85],
    ["85%", 85],
    ["0.5", 0.5],
    ["12,34", undefined],
    ["rpm", undefined],
    ["", undefined],
  ] as const)("%j is %s", (text, value) => expect(cellNumber(text)).toBe(value));
});

it("shows a cell whole up to forty characters, else its beginning and how long it is", () => {
  expect(shownCell("x".repeat(40))).toBe("x".repeat(40));
  expect(shownCell("x".repeat(41))).toBe(`${"x".repeat(30)}… (41 characters)`);
});

it("has all the words of some lines", () => {
  expect(
    wordsOf([
      { line: 1, texts: ["loss", "W"] },
      { line: 2, texts: ["rpm down"] },
    ]),
  ).toBe("loss W rpm down");
});
