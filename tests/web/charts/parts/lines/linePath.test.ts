import { plot } from "@observablehq/plot";
import { describe, expect, it } from "vitest";
import { type LineLook, linePath } from "../../../../../web/charts/parts/lines/linePath.ts";
import { drawing } from "../../../../support/drawing.ts";

const path = (x: readonly number[], y: readonly number[], look: LineLook = {}) =>
  plot({ document: drawing().document, marks: [linePath(x, y, look)] }).querySelector("path:last-child");

describe("linePath", () => {
  it("goes through its points in pixels, to a hundredth", () => {
    expect(path([0, 10.004, 20], [5, 6.128, 7])?.getAttribute("d")).toBe("M0,5L10,6.13L20,7");
  });

  it("breaks where a point is not a number and goes on after it", () => {
    expect(path([0, 1, 2, 3, Number.NaN, 5], [0, Number.NaN, 2, 3, 4, 5])?.getAttribute("d")).toBe("M0,0M2,2L3,3M5,5");
  });

  it("takes what is said of its look and leaves out what is not", () => {
    const line = path([0], [0], { stroke: "#123456", "stroke-dasharray": undefined });
    expect(line?.getAttribute("stroke")).toBe("#123456");
    expect(line?.getAttribute("fill")).toBe("none");
    expect(line?.hasAttribute("stroke-dasharray")).toBe(false);
  });
});
