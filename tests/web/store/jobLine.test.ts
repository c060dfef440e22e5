import { expect, it } from "vitest";
import { jobLine } from "../../../web/store/jobLine.ts";
import { inventedJob } from "../../support/inventedJob.ts";

it("tells a job by its car, its days, its packs and its roads", () => {
  const job = { ...inventedJob(), isInvented: false };
  expect(jobLine(job)).toBe("Saloon of about 1960 · 40 km a day · 2 packs · 1 road");
  expect(jobLine({ ...job, longestDay_km: 80, isInvented: true })).toBe(
    "Saloon of about 1960 · 40 km a day, 80 km at most · 2 packs · 1 road · invented",
  );
});
