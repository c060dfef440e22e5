import { expect, it } from "vitest";
import { placesOf } from "../../../../web/editing/fieldTable/placesOf.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

it("are one for each entry of the list at the star", () => {
  const job = inventedJob();
  expect(placesOf(job, "packs.*.name")).toEqual(["packs.0.name", "packs.1.name"]);
  expect(placesOf(job, "vehicle.name")).toEqual(["vehicle.name"]);
  expect(placesOf(job, "costs.*.name")).toEqual([]);
});
