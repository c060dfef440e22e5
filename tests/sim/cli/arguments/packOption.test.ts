import { expect, it } from "vitest";
import { packIndexOf } from "../../../../sim/cli/arguments/packOption.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

/** "Small" of 8 modules, "Large" of 16. */
const job = inventedJob();
const index = (pack?: string) => packIndexOf(job, { positionals: [], values: pack === undefined ? {} : { pack } });

it("is the one named, or else the heaviest", () => {
  expect(index("Small")).toBe(0);
  expect(index()).toBe(1);
});

it("says which name is near, or which there are", () => {
  expect(() => index("Smal")).toThrow('--pack: found no pack "Smal"; did you mean Small');
  expect(() => index("Zebra 400")).toThrow("the packs are Small, Large");
});
