import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type * as z from "zod";
import { Weights } from "../../../../shared/job/schema/weights.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { packSplit } from "../../../../sim/plan/weight/packSplit.ts";
import { heaviestPack_kg, splitWords } from "../../../../sim/plan/weight/splitWords.ts";
import { axleLoads, overloads } from "../../../../sim/plan/weight/weigh.ts";
import { plateNotes, weightNotes } from "../../../../sim/plan/weight/weightNotes.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { fixedly } from "../../../support/fixedly.ts";

type Written = z.input<typeof Weights>;

/** A saloon of 2400 mm wheelbase, 500 kg on its front axle and 450 kg on its rear one. */
const written: Written = {
  wheelbase_mm: 2400,
  weighed: { front_kg: 500, rear_kg: 450 },
  out: [
    { name: "engine", mass_kg: 150, place_mm: 0 },
    { name: "tank", mass_kg: 30, place_mm: 2700 },
  ],
  in: [{ name: "motor", mass_kg: 60, place_mm: 200 }],
  driver: { name: "driver", mass_kg: 75, place_mm: 1300 },
  load: [{ name: "three aboard and bags", mass_kg: 255, place_mm: 2000 }],
  boxes: [
    { name: "front box", place_mm: -100, share_frac: 0.4 },
    { name: "boot box", place_mm: 2600, share_frac: 0.6 },
  ],
};
const weightsOf = (changes: Partial<Written> = {}) => Weights.parse({ ...written, ...changes });
/** 200 kg of pack. */
const job = bareJob({
  vehicle: { kerb_kg: 950, removed_kg: 180, added_kg: 60 },
  module: { mass_kg: 50 },
  pack: { seriesModules: 4 },
});

describe("axle loads", () => {
  it("are those of moments worked by hand, to 0.1 kg", () => {
    const loads = axleLoads(job, weightsOf());
    const found = loads.map(({ name, front_kg, rear_kg }) => [name, front_kg, rear_kg] as const);
    // Out: 150 kg at 0 and 30 kg at 2700: rear -33.75, front -146.25. In: 60 kg at 200: rear 5, front 55.
    // Pack: 80 kg at -100: rear -3.333, front 83.333; 120 kg at 2600: rear 130, front -10.
    // Driver: rear 40.625, front 34.375. Load: 255 kg at 2000: rear 212.5, front 42.5.
    const byHand = [
      ["as it arrived", 500, 450],
      ["empty", 482.08, 547.92],
      ["driver alone", 516.46, 588.54],
      ["fully laden", 558.96, 801.04],
    ] as const;
    expect(found.map(([name]) => name)).toEqual(byHand.map(([name]) => name));
    found.forEach(([, front_kg, rear_kg], i) => {
      expect(Math.abs(front_kg - byHand[i][1])).toBeLessThan(0.1);
      expect(Math.abs(rear_kg - byHand[i][2])).toBeLessThan(0.1);
    });
  });

  it("have their total, and the share of it that rests in front", () => {
    const [arrived, empty] = axleLoads(job, weightsOf());
    expect(arrived).toMatchObject({ total_kg: 950, frontShare_frac: 500 / 950 });
    expect(arrived.gravityPlace_mm).toBeCloseTo((2400 * 450) / 950, 9);
    expect(empty.total_kg).toBeCloseTo(950 - 180 + 60 + 200, 9);
    expect(empty.frontShare_frac).toBeCloseTo(482.083 / 1030, 5);
    expect([arrived.pack, empty.pack]).toEqual([undefined, "only"]);
  });

  it("sum to the mass, and have their centre of gravity where it is, whatever is aboard", () => {
    const item = fc.record({
      name: fc.constant("x"),
      mass_kg: fc.integer({ min: 1, max: 300 }),
      place_mm: fc.integer({ min: -900, max: 4000 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 8 }), fc.array(item, { maxLength: 8 }), (into, load) => {
        const weights = weightsOf({ out: [], in: into, load });
        const sum = (items: readonly { mass_kg: number }[]) => items.reduce((total, { mass_kg }) => total + mass_kg, 0);
        const laden = axleLoads(job, weights).at(-1);
        const total_kg = 950 + 200 + 75 + sum(into) + sum(load);
        expect(Math.abs((laden?.front_kg ?? 0) + (laden?.rear_kg ?? 0) - total_kg)).toBeLessThan(1e-9 * total_kg);
        const moments =
          450 * 2400 +
          80 * -100 +
          120 * 2600 +
          75 * 1300 +
          [...into, ...load].reduce((at, { mass_kg, place_mm }) => at + mass_kg * place_mm, 0);
        expect(laden?.gravityPlace_mm).toBeCloseTo(moments / total_kg, 6);
      }),
      fixedly(100),
    );
  });

  it("are the same from four corners as from two axles", () => {
    const corners = { frontLeft_kg: 255, frontRight_kg: 245, rearLeft_kg: 220, rearRight_kg: 230 };
    expect(axleLoads(job, weightsOf({ weighed: corners }))).toEqual(axleLoads(job, weightsOf()));
  });

  it("with a trailer on its ball lighten the front axle", () => {
    const towing = axleLoads(job, weightsOf({ ball: { mass_kg: 60, place_mm: 3200 } }));
    const [laden, towed] = towing.slice(-2);
    expect(towed.name).toBe("fully laden, towing");
    expect(towed.front_kg - laden.front_kg).toBeCloseTo(-20, 9);
    expect(towed.rear_kg - laden.rear_kg).toBeCloseTo(80, 9);
  });
});

it("is over a plate, the gross mass and the tyres, each by itself, and not at exactly the limit", () => {
  const plates = { front_kg: 500, rear_kg: 700, gross_kg: 1200, rearTyres_kg: 690 };
  expect(overloads({ front_kg: 500, rear_kg: 700 }, weightsOf({ plates }))).toEqual([
    { what: "rear tyres", by_kg: 10 },
  ]);
  expect(overloads({ front_kg: 510, rear_kg: 720 }, weightsOf({ plates })).map(({ what }) => what)).toEqual([
    "front axle",
    "rear axle",
    "gross",
    "rear tyres",
  ]);
});

describe("how a pack may be split", () => {
  it("is the range of shares with which every plate is met, each end exactly at one", () => {
    const weights = weightsOf({ plates: { front_kg: 600, rear_kg: 800 } });
    const split = packSplit(weights, 200);
    const { low_frac = Number.NaN, high_frac = Number.NaN } = split ?? {};
    expect(split?.over).toEqual([]);
    // By hand: without a pack and laden 485.625 and 674.375; all 200 kg in front: 693.958 and 666.042; all behind: 468.958 and 891.042.
    expect(low_frac).toBeCloseTo((891.042 - 800) / 225, 4);
    expect(high_frac).toBeCloseTo((600 - 468.958) / 225, 4);
    const at = (share_frac: number) => {
      const [front, rear] = written.boxes;
      const boxes = [
        { ...front, share_frac },
        { ...rear, share_frac: 1 - share_frac },
      ];
      return axleLoads(job, weightsOf({ boxes })).at(-1);
    };
    expect(at(low_frac)?.rear_kg).toBeCloseTo(800, 6);
    expect(at(high_frac)?.front_kg).toBeCloseTo(600, 6);
  });

  it("is none where no split will do, with what it is over at best", () => {
    const split = packSplit(weightsOf({ plates: { rear_kg: 570 } }), 200);
    expect(split?.low_frac).toBeUndefined();
    expect(split?.best_frac).toBe(1);
    expect(split?.over).toEqual([{ what: "rear axle", by_kg: expect.closeTo(666.042 - 570, 2) }]);
  });

  it("is over both axles alike where each of them is over", () => {
    // At most 500 in front: a share of 0.138; at most 700 behind: 0.849. Half way between them.
    const split = packSplit(weightsOf({ plates: { front_kg: 500, rear_kg: 700 } }), 200);
    expect(split?.best_frac).toBeCloseTo((31.042 / 225 + 191.042 / 225) / 2, 4);
    expect(split?.over.map(({ what }) => what)).toEqual(["front axle", "rear axle"]);
    expect(split?.over[0].by_kg).toBeCloseTo(split?.over[1].by_kg ?? 0, 6);
  });

  it("goes by the tyres where they bear less than the axle, and by the foremost and the rearmost of several boxes", () => {
    const [front, boot] = written.boxes;
    const boxes = [boot, { ...front, name: "tunnel", place_mm: 1200, share_frac: 0 }, front];
    const plates = { front_kg: 700, rear_kg: 900, frontTyres_kg: 600, rearTyres_kg: 800 };
    const split = packSplit(weightsOf({ boxes, plates }), 200);
    expect(split).toMatchObject({ front: "front box", rear: "boot box", over: [] });
    expect(split?.low_frac).toBeCloseTo((891.042 - 800) / 225, 4);
    expect(split?.high_frac).toBeCloseTo((600 - 468.958) / 225, 4);
  });

  it("is any share where nothing is on the plates", () => {
    expect(packSplit(weightsOf(), 200)).toMatchObject({ low_frac: 0, high_frac: 1, over: [] });
  });

  it("counts a trailer's ball", () => {
    // 60 kg at 3200 mm: 80 kg more behind.
    const towing = weightsOf({ plates: { rear_kg: 880 }, ball: { mass_kg: 60, place_mm: 3200 } });
    expect(packSplit(towing, 200)?.low_frac).toBeCloseTo((971.042 - 880) / 225, 4);
  });

  it("is none where the gross mass is over, however it is split", () => {
    expect(packSplit(weightsOf({ plates: { gross_kg: 1300 } }), 200)?.over).toEqual([
      { what: "gross", by_kg: expect.closeTo(60, 9) },
    ]);
  });

  it("is no question with a single box", () => {
    expect(packSplit(weightsOf({ boxes: [{ name: "boot", place_mm: 2600, share_frac: 1 }] }), 200)).toBeUndefined();
  });
});

/** The notes as a metric reader has them. */
const notesOf = (...given: Parameters<typeof weightNotes>) =>
  weightNotes(...given).map((note) => messageIn(note, "metric"));

describe("notes", () => {
  it("name a box behind the axle, lists that disagree with the car as driven, and a car over its plate without a pack", () => {
    expect(notesOf(job, weightsOf())).toEqual([
      "The box “boot box” sits behind the rear axle: what is in it takes weight off the front wheels and lightens the steering.",
    ]);
    const two = [2600, 2900].map((place_mm, i) => ({ name: `boot ${i}`, place_mm, share_frac: 0.5 }));
    expect(notesOf(job, weightsOf({ boxes: two }))[0]).toBe(
      "The boxes “boot 0” and “boot 1” sit behind the rear axle: what is in them takes weight off the front wheels and lightens the steering.",
    );
    const weighed = { mass_kg: 190.4567, place_mm: 0, name: "engine" };
    expect(notesOf(job, weightsOf({ out: [weighed] }))[0]).toMatch(/^What comes out sums to 190 kg here/);
    const driven = { ...job, vehicle: { ...job.vehicle, added_kg: 66.5432 } };
    expect(notesOf(driven, weightsOf())[0]).toMatch(/^What goes in sums to 60 kg here, .* driven with 66\.5 kg/);
    // Five kilograms are no difference; nor is a box behind the axle that holds nothing, or one on it.
    expect(notesOf({ ...job, vehicle: { ...job.vehicle, added_kg: 65 } }, weightsOf())).toHaveLength(1);
    const [front, boot] = written.boxes;
    const boxes = (behind: object) => weightsOf({ boxes: [front, { ...boot, ...behind }] });
    expect(notesOf(job, boxes({ place_mm: 2400 }))).toEqual([]);
    expect(
      notesOf(
        job,
        weightsOf({
          boxes: [
            { ...front, share_frac: 1 },
            { ...boot, share_frac: 0 },
          ],
        }),
      ),
    ).toEqual([]);
    const other = notesOf(job, weightsOf({ out: [], plates: { rear_kg: 400 } }));
    expect(other[0]).toBe(
      "What comes out sums to 0 kg here, and the car is driven with 180 kg: one of the two is out of date.",
    );
    const platesOf = (rear_kg: number) =>
      plateNotes(weightsOf({ out: [], plates: { rear_kg } })).map((note) => messageIn(note, "metric"));
    expect(platesOf(400)[0]).toMatch(/^Without any pack the car is already 55 kg over its limit \(rear axle\)/);
    expect(platesOf(400.4)[0]).toMatch(/already 5\d kg over its limit/);
  });

  it("say where the balance that grip goes by is no longer that of the car", () => {
    // Laden 558.96 of 1360 kg in front: 41 %.
    const balanced = (frontShare_frac: number) => ({
      ...job,
      vehicle: { ...job.vehicle, balance: { wheelbase_mm: 2400, gravityHeight_mm: 550, frontShare_frac } },
    });
    expect(notesOf(balanced(0.52), weightsOf()).at(-1)).toBe(
      "Fully laden with only the front axle carries 41 % of the weight; grip on hills goes by 52 % (weight balance).",
    );
    expect(notesOf(balanced(0.4), weightsOf())).toHaveLength(1);
    // Three hundredths either way are no difference: 0.411 lies between.
    expect([0.44, 0.382].map((share) => notesOf(balanced(share), weightsOf()).length)).toEqual([1, 1]);
    expect([0.442, 0.38].map((share) => notesOf(balanced(share), weightsOf()).length)).toEqual([2, 2]);
  });
});

describe("how much may sit where, in words", () => {
  const wordsOf = (plates: Written["plates"], pack_kg = 200) => {
    const words = splitWords("17 kWh", pack_kg, weightsOf({ plates }));
    return words && messageIn(words, "metric");
  };

  it("is a share and its mass, within the plates", () => {
    // Shares of 0.405 and 0.582 of 200 kg: up from 80.9 and down from 116.5.
    expect(wordsOf({ front_kg: 600, rear_kg: 800 })).toBe(
      "17 kWh, fully laden: 40 % to 58 % of it may sit in front box (81 kg to 116 kg), the rest in boot box.",
    );
    expect(wordsOf({})).toBe("17 kWh, fully laden: it may sit in front box and boot box in any parts.");
  });

  it("is by how much none will do, and the heaviest pack that would", () => {
    // All in front leaves 674.375 less a 24th of the pack behind: with 200 kg 666.042.
    expect(wordsOf({ rear_kg: 570 })).toBe(
      "17 kWh, fully laden: no split between front box and boot box meets every plate; at best rear axle 97 kg over.",
    );
    // 1160 kg without a pack.
    const gross = weightsOf({ plates: { gross_kg: 1300 } });
    expect(heaviestPack_kg(gross)).toBeCloseTo(140, 6);
    expect(wordsOf({ gross_kg: 1300 })).toMatch(
      /at best gross 60 kg over\. At most 140 kg of pack may sit in the two\.$/,
    );
  });

  it("is nothing with a single box", () => {
    const one = weightsOf({ boxes: [{ name: "boot", place_mm: 2600, share_frac: 1 }] });
    expect(splitWords("17 kWh", 200, one)).toBeUndefined();
  });
});
