import { describe, expect, it } from "vitest";
import { jobFileName } from "../../../../web/store/files/jobFileName.ts";

describe("the name of a job file", () => {
  const day = new Date(2026, 4, 3, 12);
  it.each([
    ["Saloon 1960, second visit", "saloon-1960-second-visit-2026-05-03.bellhousing.json"],
    ["Müller: 1/2 ../..\\ ", "muller-1-2-2026-05-03.bellhousing.json"],
    ["車", "job-2026-05-03.bellhousing.json"],
  ])("of %s is %s", (title, name) => {
    expect(jobFileName(title, day)).toBe(name);
  });

  it("stays short for a long title", () => {
    expect(jobFileName("a very ".repeat(30), day).length).toBeLessThan(100);
  });
});
