import { describe, expect, it } from "vitest";
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

describe("a car that is over a plate whenever it is driven", () => {
  // 2 m between the axles and 400 kg on each when it came; 50 kg of pack, all of it over the rear one; the driver half-way.
  const weights: NonNullable<Parameters<typeof stopOf>[0]["weights"]> = {
    wheelbase_mm: 2000,
    weighed: { front_kg: 400, rear_kg: 400 },
    out: [],
    in: [],
    load: [],
    driver: { name: "driver", mass_kg: 80, place_mm: 1000 },
    boxes: [{ name: "boot", place_mm: 2000, share_frac: 1 }],
    plates: {},
  };
  const over = (plates: typeof weights.plates) =>
    stopOf(
      { packs, controller: { ...controller, min_V: 60, max_V: 200 }, vehicle, weights: { ...weights, plates } },
      0,
      candidate,
    );
  const said = (plates: typeof weights.plates) => messageIn(over(plates)?.sentence ?? [], "metric");
  const END = "may: so it may not be driven on the road; local codes decide.";
  it("is a stop, with the plate that it is furthest over", () => {
    // Rear 400, 50 and 40: 490 kg. The car 930 kg.
    expect(said({ rear_kg: 480 })).toBe(
      `With its driver alone, 490 kg rest on the rear axle with this pack. No more than 480 kg ${END}`,
    );
    expect(over({ rear_kg: 480 })).toMatchObject({ kind: "abovePlate", limit: { value: 480 }, value: { value: 490 } });
    expect(over({ rear_kg: 480, gross_kg: 910 })).toMatchObject({ limit: { value: 910 }, value: { value: 930 } });
    expect(over({ rear_kg: 460, gross_kg: 910 })).toMatchObject({ limit: { value: 460 }, value: { value: 490 } });
    expect(said({ gross_kg: 910 })).toBe(
      `With its driver alone, the car weighs 930 kg with this pack. No more than 910 kg ${END}`,
    );
  });
  it("names an axle's tyres, the front one, and a car that is over when empty", () => {
    expect(said({ rearTyres_kg: 480 })).toMatch(
      /^With its driver alone, 490 kg rest on the rear tyres .* more than 480 kg may/,
    );
    expect(said({ front_kg: 430 })).toMatch(
      /^With its driver alone, 440 kg rest on the front axle .* more than 430 kg may/,
    );
    expect(said({ frontTyres_kg: 390 })).toMatch(/^Empty, 400 kg rest on the front tyres .* more than 390 kg may/);
  });
  it("may be split otherwise where that helps, else its boxes sit in the wrong place", () => {
    expect(ways(over({ rear_kg: 480 }))?.[1]).toBe("Place its boxes elsewhere");
    const boxes = [{ name: "bonnet", place_mm: 0, share_frac: 0 }, ...weights.boxes];
    const split = stopOf(
      {
        packs,
        controller: { ...controller, min_V: 60, max_V: 200 },
        vehicle,
        weights: { ...weights, boxes, plates: { rear_kg: 480 } },
      },
      0,
      candidate,
    );
    expect(ways(split)?.[1]).toBe("Split the pack otherwise between its boxes");
  });
  it("is none within its plates", () => {
    expect(over({ rear_kg: 490, front_kg: 440, gross_kg: 930 })).toBeUndefined();
  });
});
