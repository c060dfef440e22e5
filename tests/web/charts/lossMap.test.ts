import { describe, expect, it } from "vitest";
import { lossMap } from "../../../web/charts/lossMap.ts";
import { MILES } from "../../../web/charts/parts/figure/figureUnits.ts";
import { drawing } from "../../support/drawing.ts";
import { overlapsOf, wordsOf } from "../../support/wordsOf.ts";

const speed_rpm = [0, 1000, 3000, 6000];
const torque_Nm = [0, 20, 60, 100];
// 250 W, and 0.4 W for each Nm squared, and 0.1 W for each rpm
const loss_W = speed_rpm.map((speed) => torque_Nm.map((torque) => 250 + 0.4 * torque * torque + 0.1 * speed));
const envelope = [
  { speed_rpm: 0, torque_Nm: 120 },
  { speed_rpm: 3000, torque_Nm: 120 },
  { speed_rpm: 8000, torque_Nm: 45 },
];
const map = { name: "map.csv", speed_rpm, torque_Nm, loss_W, envelope };

describe("the map of a motor's losses", () => {
  it.each([320, 720, 1200])("keeps its words within its width and apart from each other, at %i px", (width_px) => {
    const words = wordsOf(lossMap(map, drawing(width_px)).svg);
    expect(words.length).toBeGreaterThan(5);
    expect(words.filter(({ from, to }) => from < -1 || to > width_px + 1)).toEqual([]);
    expect(overlapsOf(words.filter(({ isName }) => isName))).toEqual([]);
  });

  it("says in words what it spans and where the motor is best", () => {
    const { alt } = lossMap(map, drawing());
    // Of the nodes 6000 rpm and 60 Nm is best: 37 699 W at the shaft and 2290 W lost, 94.3 %.
    expect(alt).toContain("up to 6000 rpm and 100 Nm");
    expect(alt).toContain("most efficient at 6000 rpm and 60 Nm, with 94.3 %");
    expect(alt).not.toMatch(/NaN|undefined/);
  });

  it("reads its values at a speed, and tells every node in its table", () => {
    const { read, table } = lossMap(map, drawing());
    expect(table.rows).toHaveLength(16);
    expect(table.rows.find(([speed, torque]) => speed === 3000 && torque === 60)?.[2]).toBe(250 + 1440 + 300);
    // Fields of 96 by 72 are up to 31 rpm and 0.7 Nm off their node, and the table is straight between nodes.
    const at100 = Number.parseFloat(read(3000).values[2].text);
    expect(Math.abs(at100 / (250 + 4000 + 300) - 1)).toBeLessThan(0.02);
    expect(read(3000).values[3].text).toBe("120 Nm");
  });

  it("speaks in lb ft where the reader does", () => {
    const { alt } = lossMap(map, { ...drawing(), units: MILES });
    expect(alt).toContain("73.8 lb ft"); // 100 / 1.3558179
  });
});
