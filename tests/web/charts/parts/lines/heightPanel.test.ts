import { expect, it } from "vitest";
import { createChannels } from "../../../../../sim/index.ts";
import { roadAxis } from "../../../../../web/charts/parts/axes/roadAxis.ts";
import { BRITISH, METRIC } from "../../../../../web/charts/parts/figure/figureUnits.ts";
import { HEIGHT_PANEL_PX, heightPanel } from "../../../../../web/charts/parts/lines/heightPanel.ts";
import { drawing } from "../../../../support/drawing.ts";

/** 2 km that rise from 100 m to 200 m and fall again. */
function hill() {
  const channels = createChannels(3);
  channels.length = 3;
  channels.distance_m.set([0, 1000, 2000]);
  channels.elevation_m.set([100, 200, 100]);
  return channels;
}

function panel(units = METRIC) {
  const axis = roadAxis("distance", 2000, units);
  const above = { left: 50, right: 650, x: [0, axis.shown(2000)] as const };
  return heightPanel({ ...drawing(), units }, above, hill(), axis);
}

it("stands under the figure above it: the top of the hill is in its middle, on the same horizontal scale", () => {
  const line = [...panel().querySelectorAll('[aria-label="line"] path')].at(-1);
  const points = [...(line?.getAttribute("d") ?? "").matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  // A height of 100 m to 200 m fills the scale from 94 px, the room for the axis below, up to 30 px.
  expect(points).toEqual([
    [50, HEIGHT_PANEL_PX - 42],
    [350, 30],
    [650, HEIGHT_PANEL_PX - 42],
  ]);
});

it("is labelled in the reader's units", () => {
  expect(panel().textContent).toContain("Height (m)");
  expect(panel().textContent).toContain("Distance (km)");
  expect(panel(BRITISH).textContent).toContain("Height (ft)");
  expect(panel(BRITISH).textContent).toContain("Distance (miles)");
});
