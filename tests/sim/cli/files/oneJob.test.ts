import { expect, it } from "vitest";
import { onlyJobPath } from "../../../../sim/cli/files/oneJob.ts";

const path = (...positionals: readonly string[]) => onlyJobPath({ positionals, values: {} }, "weigh");

it("is the one file given, no fewer and no more", () => {
  expect(path("a.json")).toBe("a.json");
  expect(() => path()).toThrow("weigh: found no job file, one is wanted; bellhousing new FILE writes one");
  expect(() => path("a.json", "b.json")).toThrow("b.json: found a second argument, weigh takes one job file");
});
