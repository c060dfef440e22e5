import { expect, it } from "vitest";
import { faultsOf } from "../../support/faultsOf.ts";

const cycle = (id: string) => ({ kind: "cycle", id, title: id, cycle: "udds" });

it.each<[Record<string, unknown>, string]>([
  [{ roads: [cycle("a"), cycle("a")], drivenRoad: undefined }, 'roads.1.id: found "a" twice, ids must differ'],
  [{ drivenRoad: "nowhere" }, 'drivenRoad: found "nowhere", the id of one of the roads wanted'],
  [
    { "accessories.dcdcMin_V": 150, "accessories.dcdcMax_V": 100 },
    "accessories.dcdcMin_V: found 150 V, below dcdcMax_V (100 V) wanted",
  ],
  [
    { "origins.vehicle": { from: "typed", colour: 1 } },
    "origins.vehicle.colour: found a key this program does not know",
  ],
])("%j contradicts itself", (changes, sentence) => {
  expect(faultsOf(changes)).toContain(sentence);
});

it("takes less out of a car than it weighs", () => {
  expect(faultsOf({ "vehicle.kerb_kg": 900, "vehicle.removed_kg": 900, weights: undefined })).toEqual([
    "vehicle.removed_kg: found 900 kg taken out of 900 kg, less than the whole car wanted",
  ]);
});
