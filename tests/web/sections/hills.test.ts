import { expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import hills from "../../../web/sections/hills.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** The values of a changed demo, and its finding and warnings in a section. */
const valuesOf = (changes: Readonly<Record<string, unknown>>, id?: string) =>
  sectionValues(readJob(changedDemo(changes, id)));

it("says of a car that drives a single axle on a steep loose track: friction needed, and that both axles would do", () => {
  const found = hills.compute(
    valuesOf(
      { requirement: { startHill_ratio: 0.25, hillLength_km: 0.2 }, "environment.grip_coeff": 0.3 },
      "vineyard-pickup",
    ),
  );
  const said = hills.sentence(found);
  expect(said).toMatch(/^The car does not start on 25 % in any gear: .*, as the driven tyres have no more grip\./);
  expect(said).toMatch(
    /need a friction of 0\.48 to start on 25 %: they slip when it is loose.* both axles driven 0\.28 would do\./,
  );
});
