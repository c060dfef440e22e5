import { describe, expect, it } from "vitest";
import type { Weights } from "../../../../shared/job/schema/weights.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { bayFits, clearanceOf_mm } from "../../../../sim/plan/weight/bayFit.ts";
import { bayWords } from "../../../../sim/plan/weight/bayWords.ts";
import { bareJob } from "../../../support/bareCar.ts";

const module = { length_mm: 300, width_mm: 200, height_mm: 150 };

const room = { length_mm: 650, width_mm: 450, height_mm: 320 };

const job = bareJob({ module });

const weightsOf = (...boxes: Partial<Weights["boxes"][number]>[]): Weights => ({
  wheelbase_mm: 2300,
  weighed: { front_kg: 500, rear_kg: 500 },
  out: [],
  in: [],
  load: [],
  plates: {},
  boxes: boxes.map((box, i) => ({ name: `box ${i + 1}`, place_mm: 0, share_frac: 1 / boxes.length, ...box })),
});

const packOf = (seriesModules: number, parallelModules = 1) => ({
  ...job.packs[0],
  name: "this pack",
  seriesModules,
  parallelModules,
});

const said = (weights: Weights, modules: number) => {
  const words = bayWords(weights, job, packOf(modules));
  return words && messageIn(words, "metric");
};

describe("the boxes of a car", () => {
  it("are counted where all three sides are typed, the best way first", () => {
    const [fit, ...others] = bayFits(weightsOf(room, { length_mm: 600 }), job.module);
    expect(others).toEqual([]);
    expect(fit).toMatchObject({ box: "box 1", best: "on end", most: 8 });
    expect(fit.counts).toEqual({ upright: 4, "on the side": 4, "on end": 8 });
  });

  it("keep 10 mm free where nothing is typed", () => {
    expect(clearanceOf_mm({})).toBe(10);
    expect(clearanceOf_mm({ clearance_mm: 0 })).toBe(0);
  });

  it.each([
    [16, "they fit."],
    [17, "1 too many."],
  ])("with %i modules in two boxes of eight: %s", (modules, words) => {
    expect(said(weightsOf(room, room), modules)).toBe(
      `Modules that fit, a first look and no promise: “box 1”: 8 fit on end, 4 upright, 4 on the side; “box 2”: 8 fit on end, 4 upright, 4 on the side. this pack has ${modules} modules: ${words}`,
    );
  });

  it("say where the shares ask more of a box than goes in", () => {
    const weights = weightsOf({ ...room, share_frac: 0.75 }, { ...room, share_frac: 0.25 });
    expect(said(weights, 12)).toMatch(/they fit, but not by the shares set: “box 1” is to hold 9\.$/);
  });

  it("say of a box into which none goes that none does, and of two boxes unknown that they are two", () => {
    const tiny = { length_mm: 100, width_mm: 100, height_mm: 100 };
    expect(said(weightsOf(tiny), 1)).toBe(
      "Modules that fit, a first look and no promise: “box 1”: none, whichever way they stand. this pack has 1 module: 1 too many.",
    );
    expect(said(weightsOf(room, {}, {}), 9)).toMatch(/; of the other boxes the room inside is not known\.$/);
  });

  it("promise nothing of a box whose room is not known, and say nothing where none is", () => {
    expect(said(weightsOf(room, {}), 9)).toMatch(
      /this pack has 9 modules; of the other box the room inside is not known\.$/,
    );
    expect(said(weightsOf({}, {}), 9)).toBeUndefined();
  });
});
