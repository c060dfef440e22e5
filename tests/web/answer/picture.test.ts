import fc from "fast-check";
import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { type Answer, answerFor } from "../../../sim/index.ts";
import { answerTable } from "../../../web/answer/answerTable.ts";
import { leftAxis } from "../../../web/answer/picture/axis.ts";
import { drawAnswer } from "../../../web/answer/picture/drawAnswer.ts";
import { readAnswer } from "../../../web/answer/picture/readAnswer.ts";
import { rowsShown } from "../../../web/answer/picture/rowsShown.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../support/inventedCandidate.ts";
import { overlapsOf, wordsOf } from "../../support/wordsOf.ts";

// 10 km for every kWh today, half of that in winter, a quarter at ten years in winter; a usual day of 10 km.
function answered(sizes: readonly number[], share = 0.1, changes: Parameters<typeof inventedUse>[0] = {}): Answer {
  const unknowns = sizes.map((size) => [inventedUnknown(10 * size, 10 * size * share, 10 * size * share)]);
  return answerFor(
    inventedUse(changes),
    sizes.map((size) => inventedCandidate(size)),
    unknowns,
  );
}
const { document } = new JSDOM("").window;

describe("the rows of the picture", () => {
  it("are all packs by size where there are few", () => {
    expect(rowsShown(answered([6, 3, 5]), undefined)).toEqual([1, 2, 0]);
  });

  it("are four of many: one too small, the recommended, the one that is enough, the largest", () => {
    // 4.2 is only just enough, 5 with the whole band.
    expect(rowsShown(answered([1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12]), undefined)).toEqual([2, 3, 4, 11]);
  });

  it("hold the one that the client asked for", () => {
    const [pack] = inventedUse().packs;
    const sizes = [1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12];
    const packs = sizes.map((size) => ({ ...pack, isAskedFor: size === 9 }));
    expect(rowsShown(answered(sizes, undefined, { packs }), undefined)).toEqual([2, 3, 4, 8]);
  });

  it("always hold the chosen one", () => {
    expect(rowsShown(answered([1, 2, 3, 4.2, 5, 6, 7, 8, 9, 10, 11, 12]), 0)).toContain(0);
  });

  it("hold packs also where none is enough, and where none may be used", () => {
    expect(rowsShown(answered([1, 2]), undefined)).toEqual([0, 1]);
    const { controller } = inventedUse();
    expect(rowsShown(answered([1, 2], 0, { controller: { ...controller, max_V: 1 } }), undefined)).toEqual([0, 1]);
  });
});

it("has an axis with nought among round ticks, whatever the values", () => {
  const value = fc.double({ min: -2000, max: 2000, noNaN: true });
  fc.assert(
    fc.property(fc.array(value), (values) => {
      const { from, to, ticks } = leftAxis(values);
      expect(from).toBeLessThan(0);
      expect(to).toBeGreaterThan(Math.max(0, ...values));
      expect(ticks).toContain(0);
      expect(ticks.length).toBeLessThanOrEqual(10);
      for (const tick of ticks) expect(tick >= from && tick <= to).toBe(true);
    }),
  );
});

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

it("reads one pack at a place: yes with the whole band, no with none of it", () => {
  const answer = answered([4.4]);
  expect(readAnswer(answer, 0, 10, "metric")).toBe(
    "4.4 kWh, home with 10 km left or more: new: yes; winter: perhaps; ten years, winter: no.",
  );
  expect(readAnswer(answer, 0, 0, "metric")).toBe("4.4 kWh, home: new: yes; winter: yes; ten years, winter: perhaps.");
  expect(readAnswer(answer, 0, -5, "metric")).toContain("at most 5 km short");
});

it("makes the cells of the table from the same answer", () => {
  const answer = answered([3, 4.4, 6]);
  expect(answerTable(answer, [1, 2], "metric").rows).toEqual([
    {
      index: 1,
      name: "4.4 kWh",
      weight: "44 kg",
      left: ["29 to 38", "9 to 14", "1 short to 2"],
      pinned: "–",
      refill: "–",
      price: "–",
      verdict: "only just",
    },
    {
      index: 2,
      name: "6 kWh",
      weight: "60 kg",
      left: ["44 to 56", "17 to 23", "3 to 6"],
      pinned: "–",
      refill: "–",
      price: "–",
      verdict: "enough",
    },
  ]);
});

it("says of a refill that it begins at empty where the day takes more than the pack holds", () => {
  const none: number[] = [];
  const course = { time_s: none, soc_frac: none, wall_J: none, current_A: none };
  const refill = (isMoreThanPack: boolean) => {
    const figures = { time_h: 3.25, taper_h: 0.5, wall_kWh: 3, stored_kWh: 2.6, course, from_frac: 0.2 };
    return [{ supply: "Shed", pack: "", usualDay: { ...figures, isMoreThanPack } }];
  };
  const plan = {
    isAssumed: false,
    notes: [],
    cautions: [],
    supplies: [{ name: "Shed", wall_kW: 2.3, given_kW: 2 }],
    rows: [refill(true), refill(false)],
  };
  const { rows, refillAt } = answerTable(answered([3, 6]), [0, 1], "metric", undefined, plan);
  expect(rows.map((row) => row.refill)).toEqual(["3¼ h from empty", "3¼ h"]);
  expect(refillAt).toEqual({ power: "2.3 kW", place: "Shed" });
});
