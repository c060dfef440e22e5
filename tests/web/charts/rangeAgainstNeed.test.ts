import { describe, expect, it } from "vitest";
import { MILES } from "../../../web/charts/parts/figure/figureUnits.ts";
import { type RangeAgainstNeedInput, rangeAgainstNeed } from "../../../web/charts/rangeAgainstNeed.ts";
import { drawing } from "../../support/drawing.ts";

const pack = { isAtLeast: false, because: "enough" as const };
const input: RangeAgainstNeedInput = {
  packs: [
    { ...pack, name: "small pack", index: 0, range_m: 40_000, because: "short" },
    { ...pack, name: "middle pack", index: 1, range_m: 80_000 },
    { ...pack, name: "heavy pack", index: 2, range_m: 120_000, because: "unusable" },
    { ...pack, name: "lasting pack", index: 3, range_m: 160_000, isAtLeast: true },
  ],
  day_m: 30_000,
  needed_m: 53_200,
  longest_m: 110_000,
};

function bars(svg: SVGSVGElement): { x: number; width: number; fill: string | null }[] {
  return [...svg.querySelectorAll("rect")].map((bar) => ({
    x: Number(bar.getAttribute("x")),
    width: Number(bar.getAttribute("width")),
    fill: bar.getAttribute("fill") ?? bar.parentElement?.getAttribute("fill") ?? null,
  }));
}

describe("rangeAgainstNeed", () => {
  it("draws a bar a pack from one zero, as long as its range", () => {
    const drawn = bars(rangeAgainstNeed(input, drawing()).svg);
    expect(drawn.length).toBe(4);
    expect(new Set(drawn.map(({ x }) => x)).size).toBe(1);
    // Pixels are printed to whole ones and hundredths; a bar is some hundred of them.
    drawn.forEach(({ width }, i) => {
      expect(width / (drawn[0]?.width ?? 0)).toBeCloseTo((input.packs[i]?.range_m ?? 0) / 40_000, 1);
    });
  });

  it("leaves the bar of a pack that cannot be used empty, whatever its range", () => {
    const drawn = bars(rangeAgainstNeed(input, drawing()).svg);
    expect(drawn.map(({ fill }) => fill === "none")).toEqual([false, false, true, false]);
  });

  it("says each range and whether it is enough, in the figure and in words", () => {
    const { svg, alt } = rangeAgainstNeed(input, drawing());
    for (const words of [
      "small pack: 40\u00a0km, 13.2\u00a0km short",
      "middle pack: 80\u00a0km, enough",
      "heavy pack: 120\u00a0km, cannot be used",
      "lasting pack: at least 160\u00a0km, enough",
    ]) {
      expect(svg.textContent).toContain(words);
      expect(alt).toContain(words);
    }
    expect(alt).toContain("The usual day is 30\u00a0km and asks for 53.2\u00a0km, winter and age allowed for");
  });

  it("draws one line where nothing is allowed for, and none for a longest day that nobody knows", () => {
    const { svg } = rangeAgainstNeed({ ...input, needed_m: 30_000, longest_m: undefined }, drawing());
    expect(svg.textContent).not.toMatch(/usual day|longest day/);
    expect(svg.textContent).toContain("range needed when new 30\u00a0km");
  });

  it("tells ranges, need and verdict in the reader's miles", () => {
    const { table } = rangeAgainstNeed(input, { ...drawing(), units: MILES });
    expect(table.columns.map(({ name }) => name)).toEqual([
      "pack",
      "range_mi",
      "needed_mi",
      "day_mi",
      "longest_mi",
      "verdict",
    ]);
    // 40 km / 1.609344 = 24.8548 miles
    expect(table.rows[0]?.[1]).toBeCloseTo(24.8548, 4);
    expect(table.rows[0]?.[5]).toBe("8.2\u00a0miles short");
  });

  it("stands with a single pack that does not move", () => {
    const stuck = { ...pack, name: "stuck", index: 0, range_m: 0, because: "behind" as const };
    const { svg, alt } = rangeAgainstNeed({ ...input, packs: [stuck] }, drawing(320));
    expect(alt).toContain("stuck: 0\u00a0km, does not keep up with the road.");
    expect(svg.outerHTML).not.toMatch(/NaN|Infinity/);
  });
});
