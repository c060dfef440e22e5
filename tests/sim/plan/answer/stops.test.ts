import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { stopOf } from "../../../../sim/plan/answer/stops.ts";
import { inventedCandidate, inventedUse } from "../../../support/inventedCandidate.ts";

const { controller, vehicle, packs } = inventedUse();
const candidate = inventedCandidate(5); // 90 to 110 V, four in series, 850 kg
const stop = (low_V: number, high_V: number, gross_kg?: number) =>
  stopOf(
    { packs, controller: { ...controller, min_V: low_V, max_V: high_V }, vehicle: { ...vehicle, gross_kg } },
    0,
    candidate,
  );
const ways = (found: ReturnType<typeof stop>) => found?.ways.map(({ words }) => messageIn(words, "metric"));

it("says the limit, the value and two ways out of a pack above the controller", () => {
  const found = stop(60, 100);
  expect(found).toMatchObject({ kind: "packAboveController", limit: { value: 100 }, value: { value: 110 } });
  // Three of four modules have 82.5 V when full.
  expect(ways(found)).toEqual(["Use 3 in series", "Change the controller"]);
});

it("says so of a pack that is below the controller even when full", () => {
  const found = stop(120, 200);
  expect(found).toMatchObject({ kind: "packBelowController", limit: { value: 120 }, value: { value: 110 } });
  // Six of the modules have 135 V when empty, five only 112.5.
  expect(ways(found)).toEqual(["Use 6 in series", "Change the controller"]);
});

it("says so of a car above its plate", () => {
  const found = stop(60, 200, 830.4);
  expect(found).toMatchObject({ kind: "aboveGross", limit: { value: 830.4 }, value: { value: 850 } });
  expect(messageIn(found?.sentence ?? [], "metric")).toBe(
    "As driven the car weighs 850 kg with this pack. Its plate allows 830 kg, 20 kg less.",
  );
  expect(ways(found)).toEqual(["Use fewer modules", "Carry 20 kg less"]);
});

it("finds nothing at the limits themselves", () => {
  expect(stop(110, 200, 850)).toBeUndefined();
  expect(stop(60, 110)).toBeUndefined();
});
