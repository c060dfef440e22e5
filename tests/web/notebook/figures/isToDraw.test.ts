import { describe, expect, it } from "vitest";
import { METRIC, MILES } from "../../../../web/charts/parts/figure/figureUnits.ts";
import { isToDraw } from "../../../../web/notebook/figures/isToDraw.ts";

const drawn = { value: { load_kg: 70 }, width_px: 700, units: METRIC };

describe("isToDraw", () => {
  it("draws what was never drawn, late or not", () => {
    expect(isToDraw(undefined, drawn, false)).toBe(true);
    expect(isToDraw(undefined, drawn, true)).toBe(true);
  });

  it("leaves figures standing while their value is the very same", () => {
    expect(isToDraw(drawn, { ...drawn }, false)).toBe(false);
  });

  it("waits for the whole of a change, and draws it then", () => {
    const changed = { ...drawn, value: { load_kg: 80 } };
    expect(isToDraw(drawn, changed, true)).toBe(false);
    expect(isToDraw(drawn, changed, false)).toBe(true);
  });

  it("draws at once for another width and for other units", () => {
    expect(isToDraw(drawn, { ...drawn, width_px: 680 }, true)).toBe(true);
    expect(isToDraw(drawn, { ...drawn, units: MILES }, true)).toBe(true);
  });
});
