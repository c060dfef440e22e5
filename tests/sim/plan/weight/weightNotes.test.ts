import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { plateNotes, weightNotes } from "../../../../sim/plan/weight/weightNotes.ts";
import { job, weightsOf, written } from "./weighedByHand.ts";

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
