import { expect, it } from "vitest";
import { ProblemList } from "../../../../sim/route/log/problemList.ts";

it("says the line of each, or the file alone", () => {
  const list = new ProblemList("a.csv");
  list.note("odd", 7, "found it");
  list.note("whole", 0, "found it all");
  expect(list.finish()).toEqual([
    { code: "odd", where: "a.csv line 7", message: "found it" },
    { code: "whole", where: "a.csv", message: "found it all" },
  ]);
  expect(list.badLines).toBe(0);
});

it("counts the lines that could not be used, and lists twenty of a kind", () => {
  const list = new ProblemList("a.csv");
  for (let line = 1; line <= 22; line++) list.bad("badTime", line, "found none");
  expect(list.badLines).toBe(22);
  expect(list.count("badTime")).toBe(22);
  const problems = list.finish();
  expect(problems).toHaveLength(21);
  expect(problems[20]).toEqual({
    code: "badTime",
    where: "a.csv",
    message: '2 more of the kind "badTime", not listed',
  });
});
