import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

const controller = { name: "Invented", min_V: 60, max_V: 160, regen: { isOn: true } };

it.each<[Record<string, unknown>, string]>([
  [{ max_V: 60 }, "controller.max_V: found 60 V, above min_V (60 V) wanted"],
  [{ rollBackBelow_V: 60 }, "controller.rollBackBelow_V: found 60 V, above min_V (60 V) wanted"],
  [{ rollBackAbove_V: 160 }, "controller.rollBackAbove_V: found 160 V, below max_V (160 V) wanted"],
  [
    { regen: { isOn: true, fadeNone_kmh: 20, fadeFull_kmh: 10 } },
    "controller.regen.fadeFull_kmh: found 10 km/h, fadeNone_kmh (20 km/h) or more wanted",
  ],
])("refuses %j", (changes, sentence) => {
  expect(faultsOf({ controller: { ...controller, ...changes } })).toEqual([sentence]);
});

it("takes one whose limits are in order", () => {
  expect(faultsOf({ controller: { ...controller, rollBackBelow_V: 70, rollBackAbove_V: 150 } })).toEqual([]);
});
