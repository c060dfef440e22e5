import { describe, expect, it } from "vitest";
import type { Weights } from "../../../../shared/job/schema/weights.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { answerWords } from "../../../../sim/plan/answer/sentence.ts";
import { stopOf } from "../../../../sim/plan/answer/stops.ts";
import { overPlate, overPlateWords } from "../../../../sim/plan/weight/overPlate.ts";
import { inventedCandidate, inventedUse } from "../../../support/inventedCandidate.ts";

/** 2 m between the axles; 400 kg on each. A pack of 80 kg halves between a box over either axle; two people aboard midway. */
const weights = (plates: Weights["plates"], changes: Partial<Weights> = {}): Weights => ({
  wheelbase_mm: 2000,
  weighed: { front_kg: 400, rear_kg: 400 },
  out: [],
  in: [],
  driver: { name: "driver", mass_kg: 80, place_mm: 1000 },
  load: [{ name: "load", mass_kg: 100, place_mm: 2000 }],
  boxes: [
    { name: "front box", place_mm: 0, share_frac: 0.5 },
    { name: "boot", place_mm: 2000, share_frac: 0.5 },
  ],
  plates,
  ...changes,
});
const words = (of: Weights) => {
  const found = overPlate(of, "8 kWh", 80);
  return found && messageIn(overPlateWords("8 kWh", found), "metric");
};

describe("a car with a pack, against its plates", () => {
  // Rear: 400, 440 with half the pack, 480 with half of the driver, 580 laden.
  it("is within them at the plates themselves", () => {
    expect(overPlate(weights({ front_kg: 480, rear_kg: 580, gross_kg: 1060 }), "8 kWh", 80)).toBeUndefined();
    expect(overPlate(weights({}), "8 kWh", 80)).toBeUndefined();
  });

  it("is over one fully laden, by how much, and what would help", () => {
    // 20 kg of the rear box moved forward would do.
    expect(words(weights({ front_kg: 520, rear_kg: 560 }))).toBe(
      "With 8 kWh, fully laden: rear axle 20 kg over. A car over its plate or over what its tyres carry may not be driven on the road; local codes decide. Split otherwise between “front box” and “boot” it would be within every plate.",
    );
  });

  it("is over one that no split mends", () => {
    const found = words(weights({ front_kg: 480, rear_kg: 560 }));
    expect(found).toContain("rear axle 20 kg over");
    expect(found).not.toContain("Split");
  });

  it("is over one whenever it is driven: with its driver alone, or empty", () => {
    expect(overPlate(weights({ rear_kg: 470 }), "8 kWh", 80)).toMatchObject({
      load: { name: "driver alone", over: [{ what: "rear axle", by_kg: 10 }] },
      isAlways: true,
    });
    expect(overPlate(weights({ rearTyres_kg: 430 }), "8 kWh", 80)).toMatchObject({
      load: { name: "empty", over: [{ what: "rear tyres", by_kg: 10 }] },
      isAlways: true,
    });
  });
});

describe("the answer on a pack that is over a plate", () => {
  const candidate = inventedCandidate(8); // 80 kg
  const answered = (of: Weights) => answerFor(inventedUse({ weights: of }), [candidate], [[]]);

  it("says so before all else where that is so fully laden, and gives its range all the same", () => {
    const answer = answered(weights({ rear_kg: 560 }));
    const said = answerWords(answer).sentences.map((each) => messageIn(each, "metric"));
    expect(said[0]).toBe("Fully laden, rear axle 20 kg over: it may not be driven so; local codes decide.");
    expect(said[1]).toMatch(/^A usual day of 10 km ends with about 70 km left/);
    expect(answerWords(answer).isStop).toBe(false);
  });

  it("is a stop where it could never be driven, with two ways out", () => {
    const found = stopOf(inventedUse({ weights: weights({ rear_kg: 470 }) }), 0, candidate);
    expect(found).toMatchObject({ kind: "abovePlate", limit: { value: 470 }, value: { value: 480 } });
    expect(messageIn(found?.sentence ?? [], "metric")).toBe(
      "With its driver alone, 480 kg rest on the rear axle with this pack. No more than 470 kg may: so it may not be driven on the road; local codes decide.",
    );
    // Fully laden 100 kg more rest there, which no split takes off: the boxes themselves have to go elsewhere.
    expect(found?.ways.map(({ path }) => path)).toEqual(["packs.0.parallelModules", "weights.boxes.0.place_mm"]);
    expect(answerWords(answered(weights({ rear_kg: 470 }))).isStop).toBe(true);
  });

  it("says nothing where nobody weighed the axles", () => {
    expect(answerFor(inventedUse(), [candidate], [[]]).packs[0]).not.toHaveProperty("overPlate");
  });
});
