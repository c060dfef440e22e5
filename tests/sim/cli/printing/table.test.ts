import { expect, it } from "vitest";
import { textTable } from "../../../../sim/cli/printing/table.ts";

it("aligns words to the left and numbers to the right, two spaces apart, and ends no line in spaces", () => {
  const columns = [{ heading: "pack" }, { heading: "range (km)", isNumber: true }, { heading: "note" }];
  expect(
    textTable(columns, [
      ["small", "61.5", ""],
      ["large one", "124", "heavy"],
    ]).split("\n"),
  ).toEqual(["pack       range (km)  note", "small            61.5", "large one         124  heavy"]);
});

it("is its headings alone where there is no row", () => {
  expect(textTable([{ heading: "a" }, { heading: "b" }], [])).toBe("a  b");
});

it("puts a heading of several lines above its column", () => {
  const table = textTable([{ heading: "\npack" }, { heading: "range\n(km)", isNumber: true }], [["small", "70.1"]]);
  expect(table).toBe("       range\npack    (km)\nsmall   70.1");
});
