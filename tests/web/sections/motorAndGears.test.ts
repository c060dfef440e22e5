import { expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import motorAndGears from "../../../web/sections/motorAndGears.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** The values of a changed demo, and its finding and warnings in a section. */
const valuesOf = (changes: Readonly<Record<string, unknown>>, id?: string) =>
  sectionValues(readJob(changedDemo(changes, id)));

it("says of a car that is left in a low gear on the ring road: where the motor ends, and what the road asks", () => {
  const found = motorAndGears.compute(
    valuesOf({
      "driveline.shifting": { kind: "fixed", gear: "second" },
      roads: [{ kind: "cycle", id: "ring", title: "Ring road", cycle: "hwfet" }],
    }),
  );
  // 8000 rpm through 2.3 x 4.1111 on wheels of 284 mm: 90.6 km/h; the cycle's top speed is 59.9 mph.
  expect(motorAndGears.attention?.(found)[0]).toBe(
    "In second gear the motor is at its top speed at 90.6 km/h; the road asks for 96.4 km/h.",
  );
});
