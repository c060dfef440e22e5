import { expect, it } from "vitest";
import { emptyFigure } from "../../../../../web/charts/parts/figure/emptyFigure.ts";
import { placeLabels } from "../../../../../web/charts/parts/lines/placeLabels.ts";
import { drawing } from "../../../../support/drawing.ts";

const room = { left: 0, right: 300, top: 0, bottom: 200 };
const at = (x: number, y: number) => ({ x, y, anchor: "start" as const });
const svg = () => emptyFigure(drawing(), "").svg;

it("a label takes the first of its places that is clear of others and of what is drawn", () => {
  const dots = [{ left: 40, right: 60, top: 95, bottom: 105 }];
  const [first, second] = placeLabels(
    svg(),
    [
      { words: "motor", colour: "#000", places: [at(10, 100), at(10, 50)] },
      { words: "limit", colour: "#000", places: [at(10, 50), at(150, 50)] },
    ],
    room,
    dots,
  );
  expect(first?.top).toBe(50 - 7.5);
  expect(second?.left).toBe(150);
});

it("a label without a clear place stands elsewhere, led to its line, and never upon another", () => {
  const drawn = svg();
  const labels = Array.from({ length: 4 }, () => ({ words: "the same place", colour: "#000", places: [at(10, 100)] }));
  const boxes = placeLabels(drawn, labels, room);
  expect(boxes).toHaveLength(4);
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1))
      expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
  expect(drawn.querySelectorAll("path").length).toBe(3);
});

it("a label wider than its room is cut, not drawn beyond it", () => {
  const [box] = placeLabels(svg(), [{ words: "word ".repeat(90), colour: "#000", places: [at(0, 100)] }], room);
  expect(box?.right).toBeLessThanOrEqual(300);
});
