import { expect, it } from "vitest";
import { bridgedMoments } from "../../../../../sim/route/clean/gaps/bridgedMoments.ts";
import type { Segment } from "../../../../../sim/route/clean/gaps/findGaps.ts";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { rowsOf } from "../rowsByHand.ts";

/** Rows at 0, 1, 5, 9 and 10 s. */
const rows = rowsOf(...[0, 1, 5, 9, 10].map((time_s) => ({ time_s })));

function marked(...bridges: Segment["bridges"]) {
  const line = timeline(rows, 0, rows.count);
  const { parked, driven } = bridgedMoments(rows, { from: 0, to: rows.count, bridges }, line);
  const seconds = (marks: Uint8Array) => [...line.time_s].filter((_, k) => marks[k] === 1);
  return { parked: seconds(parked), driven: seconds(driven) };
}

it("are those strictly inside a gap", () => {
  expect(marked({ from: 1, kind: "tunnel" })).toEqual({ parked: [], driven: [2, 3, 4] });
  expect(marked({ from: 1, kind: "parked" }, { from: 2, kind: "signalLoss" })).toEqual({
    parked: [2, 3, 4],
    driven: [6, 7, 8],
  });
});

it("take in the fix between two parkings", () => {
  expect(marked({ from: 1, kind: "parked" }, { from: 2, kind: "parked" }).parked).toEqual([2, 3, 4, 5, 6, 7, 8]);
});
