import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { quantityKinds } from "../../../shared/quantity/kinds/kinds.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { unbroken } from "../../../web/look/unbroken.ts";
import { sections } from "../../../web/sections/index.ts";
import { demoJob } from "../../support/demoJob.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const habits = ["metric", "british", "american"] as const;
const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("text for the page", () => {
  it.each(Object.keys(quantityKinds) as (keyof typeof quantityKinds)[])(
    "keeps %s in one piece for every reader",
    (kind) => {
      for (const units of habits) {
        for (const value of [0.25, 4, 800]) expect(unbroken(writeQuantity(kind, value, units))).not.toContain(" ");
      }
    },
  );

  it("leaves all other spaces where a line may end, and the words as they are", () => {
    expect(unbroken("It goes 38 km in 5 minutes, 18 3/4 cwt and ± 2.5 % more: 1 in 6, 3 packs")).toBe(
      "It goes 38\u00a0km in 5\u00a0minutes, 18\u00a03/4\u00a0cwt and ±\u00a02.5\u00a0% more: 1\u00a0in\u00a06, 3 packs",
    );
    expect(unbroken("WLTC class 3b, 5 modules, 12 Vans")).toBe("WLTC class 3b, 5 modules, 12 Vans");
  });

  it("ends no line of a finding between number and unit, for every demo and reader", () => {
    const left = /\d (km|kWh|kg|miles|mph|V|Wh|cwt|lb|Nm|kW|bhp|hp|rpm|A|%|°C|°F)\b/;
    let quantities = 0;
    demos.forEach((_, which) => {
      const job = demoJob(which);
      for (const units of habits) {
        const values = sectionValues(job, { units });
        for (const section of sections) {
          const result = section.compute(values as never) as never;
          for (const said of [section.sentence(result), ...(section.attention?.(result) ?? [])]) {
            const shown = unbroken(said);
            expect(shown).not.toMatch(left);
            expect(plain(shown)).toBe(plain(said)); // money is in one piece from the start
            quantities += shown.split("\u00a0").length - 1;
          }
        }
      }
    });
    expect(quantities).toBeGreaterThan(200);
  });
});
