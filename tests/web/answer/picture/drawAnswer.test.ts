import fc from "fast-check";
import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import type { Answer } from "../../../../sim/index.ts";
import { drawAnswer } from "../../../../web/answer/picture/drawAnswer.ts";
import { rowsShown } from "../../../../web/answer/picture/rowsShown.ts";
import { inventedUse } from "../../../support/inventedCandidate.ts";
import { overlapsOf, wordsOf } from "../../../support/wordsOf.ts";
import { answered } from "../answeredByHand.ts";

const { document } = new JSDOM("").window;

describe("the drawing", () => {
  const draw = (answer: Answer, width_px = 900, chosen = answer.recommended) =>
    drawAnswer(answer, {
      document,
      width_px,
      rowHeight_px: 80,
      units: "metric",
      rows: rowsShown(answer, chosen),
      chosen,
    });

  it("has three marks a row, the value of each where the axis has it, and says itself in words", () => {
    const answer = answered([3, 4.4, 6]);
    const { svg, toPixel } = draw(answer);
    expect(svg.querySelectorAll(".row")).toHaveLength(3);
    expect(svg.querySelectorAll(".mark")).toHaveLength(9);
    const ring = svg.querySelectorAll(".mark-new circle")[1];
    expect(Number(ring?.getAttribute("cx"))).toBeCloseTo(toPixel(34), 1);
    expect(svg.getAttribute("aria-label")).toContain(
      "4.4 kWh: new 29 to 38, winter 9 to 14, ten years, winter 1 short to 2, only just",
    );
    expect(svg.querySelector(".is-chosen")?.textContent).toContain("ten years, winter: 1 short to 2");
  });

  it("shows a stop in words and without a mark", () => {
    const { controller } = inventedUse();
    const { svg } = draw(answered([4], 0, { controller: { ...controller, max_V: 1 } }), 900, 0);
    expect(svg.querySelectorAll(".mark")).toHaveLength(0);
    expect(svg.textContent).toContain("Full, this pack has 110 V");
    expect(svg.textContent).toContain("stop");
  });

  it("has no words upon each other on the client sheet, where rows are lowest", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        (tenths, usualDay_km, more_km) => {
          const sizes = tenths.map((tenth) => tenth / 10);
          const answer = answered(sizes, 0.1, { usualDay_km, longestDay_km: usualDay_km + more_km });
          const chosen = answer.recommended ?? 0;
          const { svg } = drawAnswer(answer, {
            document,
            width_px: 680,
            rowHeight_px: 50,
            units: "metric",
            rows: rowsShown(answer, chosen),
            chosen,
          });
          expect(overlapsOf(wordsOf(svg))).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("keeps the words of the chosen pack's mark in the picture, wherever the mark is", () => {
    for (const usualDay_km of [5, 20, 60, 190, 900]) {
      const answer = answered([3, 30], 0.1, { usualDay_km, longestDay_km: 2 * usualDay_km });
      for (const width_px of [390, 900]) {
        const { svg } = drawAnswer(answer, {
          document,
          width_px,
          rowHeight_px: 80,
          units: "metric",
          rows: [0, 1],
          chosen: 0,
          evenings: new Map(
            answer.packs.map(({ name }, i) => {
              const left = 30 + 270 * i - usualDay_km;
              const evening = { left, isWinter: false, isLongest: false };
              return [name, { new: [evening, { ...evening, isLongest: true }], old: [{ ...evening, left: left / 2 }] }];
            }),
          ),
        });
        const words = wordsOf(svg).filter(
          ({ text }) => text.endsWith("winter day, ten years") || text === "winter, ten years",
        );
        expect(words).toHaveLength(1);
        for (const { from, to } of words) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(width_px);
        }
      }
    }
  });

  it("keeps within its width, with numbers only, for any packs", () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(
        sizes,
        fc.integer({ min: 1, max: 400 }),
        fc.constantFrom(320, 390, 900, 1240),
        (tenths, usualDay_km, width_px) => {
          const answer = answered(
            tenths.map((tenth) => tenth / 10),
            0.1,
            { usualDay_km, longestDay_km: 2 * usualDay_km },
          );
          const { svg } = draw(answer, width_px);
          expect(svg.outerHTML).not.toMatch(/NaN|undefined|Infinity/);
          for (const shape of svg.querySelectorAll(".mark line")) {
            for (const end of ["x1", "x2"]) {
              expect(Number(shape.getAttribute(end))).toBeGreaterThanOrEqual(0);
              expect(Number(shape.getAttribute(end))).toBeLessThanOrEqual(width_px);
            }
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
