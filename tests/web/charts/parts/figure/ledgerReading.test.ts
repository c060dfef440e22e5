import { expect, it } from "vitest";
import { partsAlong, readPart } from "../../../../../web/charts/parts/figure/ledgerReading.ts";
import type { Segment } from "../../../../../web/charts/parts/figure/ledgerStack.ts";

const parts: Segment[] = [
  { entry: "aero", value: 60, from: 0, to: 60 },
  { entry: "rolling", value: 40, from: 60, to: 100 },
];

it("goes from the middle of one part to that of the next", () => {
  const position = partsAlong(parts, (value) => 2 * value, 80);
  expect([position.toPixel(0), position.toPixel(1), position.fromPixel(160, 0)]).toEqual([60, 160, 1]);
});

it("says what a part takes, and how much of the whole that is", () => {
  const unit = { sign: "Wh/km" } as Parameters<typeof readPart>[3];
  expect(readPart(parts, { name: "A", total: 100 }, 0.2, unit)).toEqual({
    where: "air",
    values: [
      { label: "A", text: "60 Wh/km" },
      { label: "share", text: "60 %" },
    ],
  });
  expect(readPart([], { name: "A", total: 100 }, 0, unit).values[0].text).toBe("100 Wh/km");
});
