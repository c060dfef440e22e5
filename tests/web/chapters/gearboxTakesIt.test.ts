import { expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import gearboxTakesIt from "../../../web/chapters/gearboxTakesIt.ts";
import hills from "../../../web/sections/hills.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** The values of a changed demo, and its finding and warnings in a section. */
const valuesOf = (changes: Readonly<Record<string, unknown>>, id?: string) =>
  sectionValues(readJob(changedDemo(changes, id)));

it("says of a car that has a tall gear and a low cap on a steep hill: needs, has, what binds, and which gear would do", () => {
  const values = valuesOf({
    "driveline.shifting": { kind: "fixed", gear: "fourth" },
    "controller.torqueCap_Nm": 70,
    "requirement.startHill_ratio": 1 / 6,
  });
  const found = hills.compute(values);
  expect(hills.sentence(found)).toMatch(
    /^In fourth, the gear used, the car does not start on 16\.7 %: it needs 1\d\d Nm, has 70 Nm, as the controller lets no more through\. It starts on 16\.7 % in first with a fifth/,
  );
  expect(hills.summary?.(found)).toMatch(/^does not start in fourth, the gear used; starts on 16\.7 % in first/);
  // The chapter says so before it says that the gearbox stands the torque.
  expect(gearboxTakesIt.sentence(gearboxTakesIt.compute(values))).toMatch(
    /^In fourth, the gear used, the car does not start on 16\.7 %.* The gearbox takes the torque: the motor gives up to 70 Nm/,
  );
});
