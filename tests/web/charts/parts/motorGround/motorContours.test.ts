import { expect, it } from "vitest";
import { METRIC } from "../../../../../web/charts/parts/figure/figureUnits.ts";
import { drawFrame, type Frame } from "../../../../../web/charts/parts/figure/frame.ts";
import { type ContourKind, motorContours } from "../../../../../web/charts/parts/motorGround/motorContours.ts";
import { torqueShown } from "../../../../../web/charts/parts/motorGround/torqueShown.ts";
import { drawing } from "../../../../support/drawing.ts";

const frame: Frame = { left: 50, right: 850, top: 20, bottom: 620, height: 660, x: [0, 6000], y: [0, 120] };

/** Numbers on contours of a table that rises evenly with the torque from nought to `most`. */
function numbers(kind: ContourKind, most: number, least = 0, isInside = () => true): string[] {
  const table = { speed_rpm: [0, 6000], torque_Nm: [0, 120], values: [0, 0, most, most] };
  const contours = motorContours(kind, table, torqueShown(METRIC), least);
  const svg = drawFrame(drawing(900), frame, [contours.mark]);
  svg.replaceChildren();
  contours.writeNumbers(svg, frame, isInside);
  return [...new Set([...svg.querySelectorAll("text")].map(({ textContent }) => textContent ?? ""))];
}

it("writes watts below a thousand and kilowatts from there on", () => {
  // 1500 W over 600 px: 500 W at 200 px and 1000 W at 400 px, far from each other.
  expect(numbers("loss", 1500)).toEqual(expect.arrayContaining(["500 W", "1 kW"]));
  expect(numbers("loss", 1500)).not.toContain("1000 W");
});

it("has contours within what the table holds, from the least that is wanted", () => {
  expect(numbers("loss", 1500)).not.toContain("2 kW");
  expect(numbers("loss", 1500, 1000)).toEqual(["1 kW"]);
  expect(numbers("efficiency", 88, 80)).toEqual(expect.arrayContaining(["80 %", "85 %"]));
  expect(numbers("efficiency", 88, 80)).toHaveLength(2);
});

it("writes no number where none is allowed", () => {
  expect(numbers("loss", 1500, 0, () => false)).toEqual([]);
});
