import { expect, it } from "vitest";
import { sampleColumns } from "../../../../sim/route/table/sampleColumns.ts";
import { columnsOf, layoutOf } from "./layoutOf.ts";

it("has header, role, cells and numbers of each column", () => {
  const { columns } = columnsOf("time,Speed (km/h)", "08:00:00,10", "08:00:01,11", "08:00:02,12", "08:00:03,x");
  expect(columns[1]).toMatchObject({
    index: 1,
    header: "Speed (km/h)",
    named: "speed",
    unit: "kmh",
    numbers: [10, 11, 12],
  });
  expect(columns[0].numbers).toEqual([]);
});

it("takes the unit of most cells before that of the row of units, and that before the header's", () => {
  const inCells = columnsOf("time,speed (km/h)", "1,10 mph", "2,11 mph", "3,12 mph").columns;
  expect(inCells[1].unit).toBe("mph");
  const inRow = sampleColumns(layoutOf("time,speed (km/h)", "s,mph", "1,10", "2,11", "3,12"));
  expect(inRow.map(({ unit }) => unit)).toEqual(["s", "mph"]);
});

it("cuts a header that nobody wants to read back", () => {
  const { columns } = columnsOf(`time,${"speed ".repeat(100)}`, "1,10", "2,11", "3,12");
  expect(columns[1].header).toHaveLength(80);
});
