import { expect, it } from "vitest";
import { chargeTimes } from "../../../web/charts/chargeTimes.ts";
import { drawing } from "../../support/drawing.ts";

const bars = [
  { name: "Garage", usualDay_h: 3, winterDay_h: 4, emptyToFull_h: 6, night: { hours_h: 8, isCheap: true } },
  { name: "Wall", emptyToFull_h: 2 },
];

it("has a row of hours for each place, in words and in its table", () => {
  const { alt, table, read } = chargeTimes(bars, drawing());
  expect(table.rows).toEqual([
    ["Garage", 3, 4, 6, 8],
    ["Wall", "", "", 2, ""],
  ]);
  expect(alt).toMatch(/Garage: usual day 3 h, in winter 4 h, empty to full 6 h; cheap hours 8 h \(dashed\)\./);
  expect(read?.(1)).toMatchObject({ where: "Wall", values: [{ label: "takes" }] });
});

it("says that the pack is charged nowhere", () => {
  expect(chargeTimes([], drawing()).alt).toMatch(/not charged anywhere/);
});
