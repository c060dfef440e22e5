import { expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import axleWeights from "../../../web/sections/axleWeights.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** The values of a changed demo, and its finding and warnings in a section. */
const valuesOf = (changes: Readonly<Record<string, unknown>>, id?: string) =>
  sectionValues(readJob(changedDemo(changes, id)));

it("says of a car with all of its pack behind the rear axle: by how much it is over, and that no split helps", () => {
  const boxes = [
    { name: "boot floor", place_mm: 2650, share_frac: 0.4 },
    { name: "boot box", place_mm: 2950, share_frac: 0.6 },
  ];
  const { packs } = changedDemo({}) as { packs: readonly { readonly name: string }[] };
  const found = axleWeights.compute(
    valuesOf({
      "weights.boxes": boxes,
      "weights.plates.rear_kg": 680,
      packs: packs.filter(({ name }) => name === "29 kWh"),
    }),
  );
  // Empty: 295.8 kg of pack at 2830 mm of 2490 on a rear axle of 446.3 kg without it: 782.5 kg.
  expect(axleWeights.sentence(found)).toMatch(/^With 29 kWh, empty: rear axle 103 kg over\./);
  expect(axleWeights.sentence(found)).toMatch(
    /no split between boot floor and boot box meets every plate; at best rear axle \d+ kg over\. At most \d+ kg of pack/,
  );
});
