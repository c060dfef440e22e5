import { expect, it } from "vitest";
import { dateInName, givenDay_s, orderOfFirstDate } from "../../../../sim/route/table/givenDate.ts";

const MAY_3_s = Date.UTC(2024, 4, 3) / 1000;

it("is the start of the day, or 0 where none is given", () => {
  expect(givenDay_s("2024-05-03")).toBe(MAY_3_s);
  expect(givenDay_s(undefined)).toBe(0);
});

it("says the order in which the first date of a file is the one given", () => {
  expect(orderOfFirstDate(["", "03/05/2024"], "2024-05-03", "a.csv")).toBe("dmy");
  expect(orderOfFirstDate(["05/03/2024"], "2024-05-03", "a.csv")).toBe("mdy");
  expect(() => orderOfFirstDate(["04/05/2024"], "2024-05-03", "a.csv")).toThrow(
    "found 2024-05-03, but the first date of a.csv is written 04/05/2024",
  );
});

it("finds a day in a file's name, if there is such a day", () => {
  expect(dateInName("log_20240503_0812.csv")).toEqual({ date: "2024-05-03", time_s: MAY_3_s });
  expect(dateInName("2024-05-03.csv")?.time_s).toBe(MAY_3_s);
  expect(dateInName("20241340.csv")).toBeUndefined();
  expect(dateInName("drive.csv")).toBeUndefined();
});
