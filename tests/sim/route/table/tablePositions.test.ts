import { expect, it } from "vitest";
import { emptyFix } from "../../../../sim/route/log/fixes.ts";
import type { Hemisphere } from "../../../../sim/route/log/logFile.ts";
import { guessColumns } from "../../../../sim/route/table/guessColumns.ts";
import { TableColumns } from "../../../../sim/route/table/tableColumns.ts";
import { TablePositions } from "../../../../sim/route/table/tablePositions.ts";
import { layoutOf } from "./layoutOf.ts";

/** Positions of a table of time, latitude and longitude, and the first row's fix. */
function read(rows: readonly string[], hemisphere?: Hemisphere) {
  const layout = layoutOf("time,lat,lon", ...rows.map((row, i) => `${i},${row}`));
  const columns = new TableColumns(guessColumns(layout), layout.decimal);
  const positions = new TablePositions(layout, columns, hemisphere);
  const fixes = layout.rows.map((row) => {
    const fix = emptyFix(1, 0);
    return { bad: positions.read(row, fix), fix };
  });
  return { ...fixes[0], fixes, question: positions.question() };
}
const three = (row: string) => [row, row, row];

it("reads plain degrees as north and east, as they are written", () => {
  const { fix, question } = read(three("50.123456,8.5"));
  expect([fix.latitude_deg, fix.longitude_deg]).toEqual([50.123456, 8.5]);
  expect(question).toMatchObject({ guess: "NE", decided: true });
});

it("reads degrees and minutes run together, whose quarter of the globe is a question", () => {
  const { fix, question } = read(three("5007.5,00830.0"));
  expect(fix.latitude_deg).toBeCloseTo(50.125, 9);
  expect(fix.longitude_deg).toBeCloseTo(8.5, 9);
  expect(question).toMatchObject({ guess: "NE", decided: false });
});

it("puts them where they are said to be, unless the file says so itself", () => {
  const given = read(three("5007.5,00830.0"), "SW");
  expect(given.fix.latitude_deg).toBeCloseTo(-50.125, 9);
  expect(given.fix.longitude_deg).toBeCloseTo(-8.5, 9);
  expect(given.question).toMatchObject({ guess: "SW", evidence: "given" });
  const signed = read(three("50.5 N,-8.5"), "SE");
  expect(signed.fix.latitude_deg).toBe(50.5);
  expect(signed.question).toMatchObject({ guess: "NW", decided: true });
});

it("says what stands where a position should, and nothing where nothing does", () => {
  const { fixes } = read(["50.1,8.1", "50.1,8.2", "50.1,8.3", ",", "95,8.4"]);
  expect(fixes.map(({ bad }) => bad?.found)).toEqual([undefined, undefined, undefined, undefined, "95, 8.4"]);
});
