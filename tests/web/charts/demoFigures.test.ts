import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { drawing } from "../../support/drawing.ts";
import { overlapsOf, wordsOf } from "../../support/wordsOf.ts";
import { demoFigures } from "./demoDrawings.ts";

// The jobs on board through the real simulation: what a reader sees first must be clean at a phone's width too.
describe.each(demos.map((demo) => demo.id))("figures of the demo %s", (id) => {
  const figures = Object.entries(demoFigures(id));

  it.each(figures)("%s is whole at every width", (_, draw) => {
    for (const width of [340, 720, 1200]) {
      const { svg, alt, table } = draw(drawing(width));
      expect(`${svg.outerHTML}${alt}`).not.toMatch(/NaN|Infinity|undefined|\bnull\b|unknown/);
      expect(table.rows.length).toBeGreaterThan(0);
      const words = wordsOf(svg);
      expect(words.filter(({ from, to }) => from < -1 || to > width + 1)).toEqual([]);
      expect(overlapsOf(words.filter((word) => word.isName))).toEqual([]);
    }
  });
});
