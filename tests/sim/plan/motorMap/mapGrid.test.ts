import { describe, expect, it } from "vitest";
import type { Problem } from "../../../../shared/problems.ts";
import { gridAxis, nearestNode } from "../../../../sim/plan/motorMap/mapGrid.ts";

function axisOf(what: "speed" | "torque", values: readonly number[]) {
  const problems: Problem[] = [];
  const nodes = gridAxis("map.csv", what, what === "speed" ? "rpm" : "Nm", values, problems);
  expect(problems.every(({ code, where }) => code === "map-axis" && where === "map.csv")).toBe(true);
  return { nodes, messages: problems.map(({ message }) => message) };
}

describe("an axis", () => {
  it("is its distinct values, rising, with nought among them", () => {
    expect(axisOf("speed", [2000, 1000, 2000, 500])).toEqual({ nodes: [0, 500, 1000, 2000], messages: [] });
    expect(axisOf("torque", [0, 10, 20])).toEqual({ nodes: [0, 10, 20], messages: [] });
    expect(axisOf("torque", [-20, 10, 20]).nodes).toEqual([-20, 0, 10, 20]);
  });
  it("takes values within four thousandths of its span as one", () => {
    // 4 of 1000; the span is the largest of either sign.
    expect(axisOf("speed", [500, 504, 1000]).nodes).toEqual([0, 500, 1000]);
    expect(axisOf("speed", [500, 504.1, 1000]).nodes).toEqual([0, 500, 504.1, 1000]);
    expect(axisOf("torque", [-1000, 50, 53.9, 100]).nodes).toEqual([-1000, 0, 50, 100]);
  });
});

describe("an axis refused", () => {
  it("has values beyond those of a job", () => {
    expect(axisOf("speed", [100, 30_000]).messages).toEqual([]);
    expect(axisOf("speed", [100, 30_001]).messages).toEqual(["found a speed of 30001 rpm, at most 30000 rpm wanted"]);
    expect(axisOf("torque", [100, 10_000]).messages).toEqual([]);
    expect(axisOf("torque", [-10_001, 100, 200]).messages).toEqual([
      "found a torque of 10001 Nm, at most 10000 Nm wanted",
    ]);
  });
  it("has a speed below nought", () => {
    expect(axisOf("speed", [-5, 100, 200]).messages).toEqual(["found a speed of -5 rpm, wanted 0 or more"]);
  });
  it("has fewer than two values above nought", () => {
    expect(axisOf("speed", [0, 100]).messages).toEqual(["found a single speed above 0 rpm, at least 2 wanted"]);
    expect(axisOf("torque", [-20, 0]).messages).toEqual(["found no torque above 0 Nm, at least 2 wanted"]);
    expect(axisOf("speed", []).messages).toEqual(["found no speed above 0 rpm, at least 2 wanted"]);
    expect(axisOf("torque", [0.5, 0.9]).messages).toEqual([]);
  });
  it("has as many nodes as no job takes", () => {
    // Either way as far as it goes they are 4.008 of 1000 apart, just more than what counts as one.
    const even = (count: number) => Array.from({ length: count }, (_, i) => -1000 + (2000 * i) / (count - 1));
    expect(axisOf("torque", even(500)).messages).toEqual(["found 500 torques, fewer than 500 wanted"]);
    expect(axisOf("torque", even(499)).messages).toEqual([]);
  });
});

it("finds the node nearest to a value, the first of two as near", () => {
  const nodes = [0, 100, 200];
  expect([-50, 0, 49, 51, 150, 199, 900].map((value) => nearestNode(nodes, value))).toEqual([0, 0, 0, 1, 1, 2, 2]);
});
