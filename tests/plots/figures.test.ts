import { describe, expect, it } from "vitest";
import { drawing } from "../support/drawing.ts";
import { figures } from "../support/inventedFigures.ts";
import { snapshotSvg } from "../support/snapshotSvg.ts";

// A change detector, not a reference: a picture that moves in a change that does not speak of figures is a fault.
describe("figures look as they did", () => {
  it.each(Object.entries(figures))("%s", async (name, draw) => {
    await expect(snapshotSvg(draw(drawing(480)).svg)).toMatchFileSnapshot(`./snapshots/${name}.svg`);
  });
});
