import { describe, expect, it } from "vitest";
import { dateOrder, timeForm } from "../../../../sim/route/table/timeForm.ts";

const form = (cells: readonly (string | number)[], unit = "") => timeForm(cells.map(String), unit, ".");

it("knows date and clock, clocks alone, and clocks without signs", () => {
  expect(form(["2024-05-03T08:12:05Z"])).toEqual({ kind: "iso" });
  expect(form(["13/05/2024 08:12:05"])).toEqual({ kind: "dateTime", order: "dmy", isSure: true });
  expect(form(["08:12:05", "08:12:06"])).toEqual({ kind: "clock", isPacked: false });
  expect(form(["081205", "081206", "081207"])).toEqual({ kind: "clock", isPacked: true });
});

it("knows counts from 1970 by their size, in whatever part of a second", () => {
  for (const perSecond of [1, 1e3, 1e6, 1e9])
    expect(form([1_714_723_925 * perSecond])).toEqual({ kind: "epoch", perSecond });
});

it("knows a spreadsheet's days", () => {
  expect(form([45_415.341, 45_415.342, 45_415.343])).toEqual({ kind: "dayNumber" });
});

describe("numbers from a start", () => {
  it("are in the unit named", () => {
    expect(form([0, 1, 2], "min")).toMatchObject({ kind: "elapsed", perSecond: 1 / 60 });
  });
  it("are seconds, milliseconds or microseconds by how far rows lie apart", () => {
    const perSecond = (step: number) => {
      const found = form([0, step, 2 * step, 3 * step]);
      return found?.kind === "elapsed" ? found.perSecond : undefined;
    };
    expect([1, 49, 50, 49_999, 50_000].map(perSecond)).toEqual([1, 1, 1e3, 1e3, 1e6]);
  });
  it("do not fall", () => {
    expect(form([5, 4, 3, 2])).toBeUndefined();
  });
});

it("is none of words", () => {
  expect(form(["soon", "later"])).toBeUndefined();
  expect(form([])).toBeUndefined();
});

it("is sure of the order of a date where one of them reads but one way", () => {
  expect(dateOrder(["03/05/2024"])).toEqual({ order: "dmy", isSure: false });
  expect(dateOrder(["03/05/2024", "03/14/2024"])).toEqual({ order: "mdy", isSure: true });
  expect(dateOrder(["03.05.2024"])).toEqual({ order: "dmy", isSure: true });
  expect(dateOrder(["2024/05/03"])).toEqual({ order: "ymd", isSure: true });
});
