import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { changedDemo } from "../../../support/changedDemo.ts";

/** What the job's reader says against a demo whose year lists these days. */
function faultsOf(daysDriven_km: unknown): readonly string[] {
  try {
    readJob(changedDemo({ "year.daysDriven_km": daysDriven_km }));
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(({ where, message }) => `${where}: ${message}`);
  }
}

describe("the days that a year lists", () => {
  it("are one to 400, and may be left out", () => {
    expect(faultsOf(undefined)).toEqual([]);
    expect(faultsOf([30])).toEqual([]);
    expect(faultsOf(Array(400).fill(2000))).toEqual([]);
  });

  it.each([
    ["none", [], "year.daysDriven_km: found 0 entries, at least 1 wanted"],
    ["more than 400", Array(401).fill(30), "year.daysDriven_km: found 401 entries, at most 400 wanted"],
    ["one of 0 km", [30, 0], "year.daysDriven_km.1: found 0 km, above 0 and at most 2000 km allowed"],
    ["one below 0 km", [-12, 30], "year.daysDriven_km.0: found -12 km, above 0 and at most 2000 km allowed"],
    [
      "one that is longer than a day",
      [2001],
      "year.daysDriven_km.0: found 2001 km, above 0 and at most 2000 km allowed",
    ],
    ["one in words", [30, "far"], 'year.daysDriven_km.1: found "far", a number above 0 and at most 2000 km wanted'],
    ["no list", 30, "year.daysDriven_km: found 30, a list wanted"],
  ])("are refused in one sentence: %s", (_, days, fault) => {
    expect(faultsOf(days)).toEqual([fault]);
  });
});
