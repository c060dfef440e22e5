import { describe, expect, it } from "vitest";
import { textWidth_px, wrapped } from "../../../../../web/charts/parts/figure/textWidth.ts";

describe("wrapped", () => {
  it("breaks at spaces and loses no word that fits", () => {
    const lines = wrapped("Four modules, iron phosphate", 100, 13, 3);
    expect(lines.join(" ")).toBe("Four modules, iron phosphate");
    for (const line of lines) expect(textWidth_px(line, 13)).toBeLessThanOrEqual(100);
  });

  it("ends what does not fit in an ellipsis, and stays within the room", () => {
    const lines = wrapped("Unbreakablewordofgreatlength and more and more and more", 90, 13, 2);
    expect(lines.length).toBe(2);
    expect(lines.every((line) => textWidth_px(line, 13) <= 90)).toBe(true);
    expect(lines.at(-1)).toMatch(/…$/);
  });
});
