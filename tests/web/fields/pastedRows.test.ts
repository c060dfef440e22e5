import { describe, expect, it } from "vitest";
import { columnsOf, pastedRows, unitOfHead } from "../../../web/fields/pastedRows.ts";

const heads = ["Name", "In series", "In parallel", "Charge to"];

describe("a pasted table", () => {
  it.each([
    [
      "9 kWh\t5\t2\r\n18 kWh\t5\t4\r\n",
      [
        ["9 kWh", "5", "2"],
        ["18 kWh", "5", "4"],
      ],
    ],
    [
      "9 kWh,5,2\n18 kWh,5,4",
      [
        ["9 kWh", "5", "2"],
        ["18 kWh", "5", "4"],
      ],
    ],
    [
      "9 kWh;5;0,28\n18 kWh;5;0,28",
      [
        ["9 kWh", "5", "0,28"],
        ["18 kWh", "5", "0,28"],
      ],
    ],
    ["5\t2", [["5", "2"]]],
    ["2\n3\n4", [["2"], ["3"], ["4"]]],
  ])("%j has rows and cells", (text, rows) => {
    expect(pastedRows(text)).toEqual(rows);
  });

  it.each(["17", "1,371", "0.50 to 0.65", "17\n"])("%j is a single cell", (text) => {
    expect(pastedRows(text)).toBeUndefined();
  });

  it("goes by its header where it has one, whatever the order", () => {
    expect(columnsOf([["In parallel", "name", "Price"]], heads, 3)).toEqual({
      places: [2, 0, undefined],
      hasHeader: true,
    });
  });

  it("goes in order from the cell pasted into where it has none, and leaves out what is too much", () => {
    expect(columnsOf([["5", "2", "95 %", "28 %"]], heads, 1)).toEqual({
      places: [1, 2, 3, undefined],
      hasHeader: false,
    });
  });

  it.each([
    ["Torque (lb ft)", "lb ft"],
    ["Speed [ rev/min ]", "rev/min"],
    ["Torque", undefined],
    ["Torque (gross) at full throttle", undefined],
  ])("has in %j the unit %s", (head, unit) => {
    expect(unitOfHead(head)).toBe(unit);
  });
});
