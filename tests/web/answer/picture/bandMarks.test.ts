import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import type { RowFrame } from "../../../../web/answer/picture/answerDrawing.ts";
import { labelPlace, markLabel, markShape } from "../../../../web/answer/picture/bandMarks.ts";
import type { Mark } from "../../../../web/answer/picture/marks.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const pen = penOf(new JSDOM("").window.document);
/** Ten pixels a kilometre; home at 300. */
const toPixel = (left: number) => 300 + 10 * left;
const frame = { toPixel, left_px: 100, right_px: 700, isNarrow: false } as RowFrame;
const mark = (value: number, condition: Mark["condition"] = "winter"): Mark => ({
  condition,
  band: { low: value - 2, value, high: value + 2 },
  words: "8 to 12",
});
const shape = (drawn: Mark, isChosen = false) => markShape(pen, drawn, 50, toPixel, isChosen, 100);

describe("a mark", () => {
  it("is a band between its ends with the value on it, in a shape of its own condition", () => {
    const winter = shape(mark(10));
    const [band, ...ends] = [...winter.querySelectorAll("line")].map((line) =>
      ["x1", "x2", "y1", "y2"].map((name) => Number(line.getAttribute(name))),
    );
    expect(band).toEqual([380, 420, 50, 50]);
    expect(ends.map(([x1, x2]) => [x1, x2])).toEqual([
      [380, 380],
      [420, 420],
    ]);
    expect(winter.querySelector("circle")?.getAttribute("cx")).toBe("400");
    expect(shape(mark(10, "new")).querySelector("circle")?.getAttribute("stroke-width")).toBe("2.5");
    expect(shape(mark(10, "tenYearsWinter")).querySelector("rect")?.getAttribute("x")).toBe("395");
  });

  it("is black only at ten years in winter of the chosen pack", () => {
    const isBlack = (condition: Mark["condition"], isChosen: boolean) =>
      shape(mark(10, condition), isChosen).classList.contains("is-band");
    expect([isBlack("tenYearsWinter", true), isBlack("tenYearsWinter", false), isBlack("new", true)]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("is cut at the picture's edge, and beyond it told in words", () => {
    // The edge is at 20 short of home.
    expect(shape(mark(-20)).querySelector("line")?.getAttribute("x1")).toBe("100");
    expect(shape(mark(-30.5)).textContent).toBe("‹ 31 short");
    expect(shape(mark(-30.5), true).textContent).toBe("");
  });
});

describe("its words", () => {
  it("stand at the right where there is room, else at the left", () => {
    // "winter: 8 to 12" are 15 letters of 7 pixels.
    expect(labelPlace(mark(10), frame)).toEqual({
      words: "winter: 8 to 12",
      from_px: 430,
      to_px: 535,
      isRight: true,
    });
    expect(labelPlace(mark(30), frame)).toMatchObject({ from_px: 465, to_px: 570, isRight: false });
    expect(markLabel(pen, mark(30), 50, frame).getAttribute("text-anchor")).toBe("end");
  });

  it("are the condition alone on a narrow picture, and point beyond its edge", () => {
    expect(labelPlace(mark(10), { ...frame, isNarrow: true }).words).toBe("winter");
    expect(labelPlace(mark(-30), frame)).toMatchObject({ words: "‹ winter: 8 to 12", from_px: 104 });
  });
});
