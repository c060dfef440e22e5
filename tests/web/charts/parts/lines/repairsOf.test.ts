import { expect, it } from "vitest";
import { repairsOf } from "../../../../../web/charts/parts/lines/repairsOf.ts";

const time_s = Float64Array.from({ length: 10 }, (_, i) => i);
const found = (marks: string, gap_s: number) => repairsOf(time_s, Uint8Array.from(marks.split(""), Number), gap_s);

it("has a span from the sample before to the last repaired one", () => {
  expect(found("0011100000", 1)).toEqual([{ from_s: 1, to_s: 4 }]);
  expect(found("1000000000", 1)).toEqual([{ from_s: 0, to_s: 0 }]);
});

it("shows spans near each other as one", () => {
  expect(found("0100010000", 3)).toEqual([{ from_s: 0, to_s: 5 }]);
  expect(found("0100010000", 2)).toEqual([
    { from_s: 0, to_s: 1 },
    { from_s: 4, to_s: 5 },
  ]);
});
