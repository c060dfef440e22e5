import { expect, it } from "vitest";
import { splitRows } from "../../../../sim/route/table/splitRows.ts";

it("cuts lines into cells, quotes kept together", () => {
  expect(splitRows('1,"a, b",2\n3,c,4', ",")).toEqual([
    ["1", "a, b", "2"],
    ["3", "c", "4"],
  ]);
});

it("takes any blanks as one, and none at the ends", () => {
  expect(splitRows("  1   2\t3 \n4 5 6", "blanks")).toEqual([
    ["1", "2", "3"],
    ["4", "5", "6"],
  ]);
});

it("takes a quote that is left open as text", () => {
  expect(splitRows('1,5" tyre\n2,"open\n3,c', ",")).toEqual([
    ["1", "5 tyre"],
    ["2", "open"],
    ["3", "c"],
  ]);
});
