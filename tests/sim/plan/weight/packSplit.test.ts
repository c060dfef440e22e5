import { describe, expect, it } from "vitest";
import { packSplit } from "../../../../sim/plan/weight/packSplit.ts";
import { axleLoads } from "../../../../sim/plan/weight/weigh.ts";
import { job, weightsOf, written } from "./weighedByHand.ts";

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
