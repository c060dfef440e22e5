import { expect, it } from "vitest";
import { roadAxis } from "../../../../../web/charts/parts/axes/roadAxis.ts";
import { METRIC } from "../../../../../web/charts/parts/figure/figureUnits.ts";
import { type LogColumns, type LogPanelInput, logPanel } from "../../../../../web/charts/parts/lines/logPanel.ts";
import { drawing } from "../../../../support/drawing.ts";

const log = (speed_mps: readonly number[]): LogColumns => ({
  time_s: Float64Array.from(speed_mps, (_, i) => 10 * i),
  speed_mps: Float64Array.from(speed_mps),
});

function panel(raw: LogColumns, cleaned: LogColumns, changes: Partial<LogPanelInput> = {}) {
  return logPanel(drawing(), {
    raw,
    cleaned,
    key: "speed_mps",
    label: "Speed",
    unit: METRIC.speed,
    axis: roadAxis("time", 100),
    x: [0, 100],
    repairs: [],
    isLast: true,
    ...changes,
  });
}

it("reaches as far as what is recorded or cleaned, over gaps, and from nought", () => {
  // 25 m/s are 90 km/h, 10 m/s are 36 km/h.
  const { frame } = panel(log([5, Number.NaN, 25]), log([5, 10, 10]));
  expect(frame.y[0]).toBe(0);
  expect(frame.y[1]).toBeGreaterThanOrEqual(90);
  expect(frame.y[1]).toBeLessThan(180);
});

it("has an empty scale and no number gone wrong where nothing but gaps was recorded", () => {
  const gaps = log([Number.NaN, Number.NaN]);
  const { frame, svg } = panel(gaps, gaps);
  expect(frame.y.every(Number.isFinite)).toBe(true);
  expect(frame.y[1]).toBeGreaterThan(frame.y[0]);
  expect(svg.outerHTML).not.toContain("NaN");
});

it("leaves out the line of a height that was not recorded, and shades each repair", () => {
  const heights = { ...log([1, 2, 3]), elevation_m: Float64Array.from([4, 6, 5]) };
  const repairs = [
    { from_s: 0, to_s: 10 },
    { from_s: 20, to_s: 30 },
  ];
  const { svg } = panel(log([1, 2, 3]), heights, { key: "elevation_m", label: "Height", unit: METRIC.height, repairs });
  const count = (selector: string) => svg.querySelectorAll(selector).length;
  expect(count('[aria-label="line"] path')).toBe(1);
  expect(count('[aria-label="rect"] rect')).toBe(2);
});

it("has the words of time only where no other panel stands beneath", () => {
  const one = log([1, 2]);
  expect(panel(one, one).svg.textContent).toContain("Time (s)");
  expect(panel(one, one, { isLast: false }).svg.textContent).not.toContain("Time (s)");
});
