import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jobText } from "../../../shared/job/jobText.ts";
import { readJobText } from "../../../shared/job/readJob.ts";
import { inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";

describe("the text of a job file", () => {
  it("reads back as the same job", () => {
    const job = withRecordedRoad(inventedJob(), 1234);
    expect(readJobText(jobText(job), "file")).toEqual(job);
  });

  it("reads back as the same document, whatever is in it", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (document) => {
        expect(JSON.parse(jobText(document))).toEqual(JSON.parse(JSON.stringify(document)));
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("has short lines, few of them for a recorded road, and ends with a line feed", () => {
    const lines = jobText(withRecordedRoad(inventedJob(), 3600)).split("\n");
    expect(lines.at(-1)).toBe("");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(110);
    expect(lines.length).toBeLessThan(1000);
  });
});
