import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { CarFit, Fitted, Mixed } from "../../../../sim/plan/measured/describeFit.ts";
import { type MixedFacts, mixedWords } from "../../../../sim/plan/measured/mixedWords.ts";
import type { ParameterId } from "../../../../sim/plan/measured/parameters.ts";

const facts: MixedFacts = { dragPerMps_frac: 0, voltage_V: 100, isZeroKnown: true, rolling_N: 120 };
/** A value known by itself to a tenth either way, of which the log's own is `ownHalf`. */
const value = (id: ParameterId, changes: Partial<Fitted> = {}): Fitted => ({
  id,
  value: 1.1,
  low: 1,
  high: 1.2,
  ownHalf: 0.1,
  alike: [],
  start: 1,
  before: 0.3,
  ...changes,
});

function wordsOf(fit: Partial<CarFit>, meets: Partial<MixedFacts> = {}): string[] {
  const whole = { fitted: [], left: [], mixed: [], ...fit } as unknown as CarFit;
  return mixedWords(whole, { ...facts, ...meets }).map((each) => messageIn(each, "metric"));
}

describe("what a log cannot tell apart", () => {
  it("is nothing of a fit that has none of it", () => expect(wordsOf({})).toEqual([]));

  it("has rolling resistance as one force, in newtons, beside that of the job's tyres", () => {
    // 1.1 times 120 N.
    expect(wordsOf({ fitted: [value("rolling")] })).toEqual([
      "Soft tyres, a brake that drags and stiff bearings are one constant force: the log shows their sum, 130 N against 120 N of the tyres in the job, and a spin of each wheel which of them it is.",
    ]);
  });

  it("has what looks like a value, each with how much it leaves open, where that widens it", () => {
    const alike: Fitted["alike"] = [
      { id: "motorLoss", slope_ratio: 1, half: 0.06 },
      { id: "mass", slope_ratio: 1, half: 0.03 },
      { id: "gain", slope_ratio: 1, half: 0.01 },
      { id: "zero", slope_ratio: 1, half: 0.004 },
    ];
    const wide = value("drag", { ownHalf: 0.05, alike });
    expect(wordsOf({ fitted: [wide] })).toEqual([
      "Which of what looks like air drag it is, a log cannot tell: by itself it is open to ±10 %, since these may be off too: the losses of motor and controller (±6 %), the mass (±3 %) and the ammeter’s gain (±1 %).",
    ]);
    expect(wordsOf({ fitted: [{ ...wide, alike: [alike[0]] }] })[0]).toMatch(
      / too: the losses of motor and controller \(±6 %\)\.$/,
    );
    // Half a per cent is said, less is nothing to speak of; nor is what the log tells apart as well.
    expect(wordsOf({ fitted: [{ ...wide, alike: [{ ...alike[3], half: 0.005 }] }] })).toHaveLength(1);
    expect(wordsOf({ fitted: [{ ...wide, alike: [alike[3]] }] })).toEqual([]);
    expect(wordsOf({ fitted: [{ ...wide, ownHalf: 0.1 }] })).toEqual([]);
    expect(wordsOf({ fitted: [{ ...wide, id: "accessories" }] })).toEqual([]);
  });

  it("has pairs of values of which one is taken for the other, which way and how much", () => {
    const pair = (ids: Mixed["ids"], slope_ratio: number): Mixed => ({ ids, slope_ratio, correlation: 0.9 });
    const fitted = [value("drag"), value("meshLoss"), value("accessories"), value("regen")];
    expect(wordsOf({ fitted, mixed: [pair(["drag", "meshLoss"], -0.4)] })).toEqual([
      "Told apart only in part: were the losses of gearbox and axle 10 % more than taken, air drag would come out 4 % less.",
    ]);
    expect(wordsOf({ fitted, mixed: [pair(["drag", "meshLoss"], 0.4)] })[0]).toMatch(/ come out 4 % more\.$/);
    // Not where one of the two was not fitted, and not for watts and braking, which have no such per cent.
    for (const other of ["mass", "accessories", "regen"] as const) {
      expect(wordsOf({ fitted, mixed: [pair(["drag", other], 0.4), pair([other, "drag"], 0.4)] })).toEqual([]);
    }
  });

  it("has wind beside drag: what a head wind of 5 km/h would look like", () => {
    // 5 km/h are 1.39 m/s; 0.12 for each of them are 17 %.
    expect(wordsOf({ fitted: [value("drag")] }, { dragPerMps_frac: 0.12 })).toEqual([
      "Wind cannot be told from air drag: a head wind of 5 km/h all the way would look like 17 % more drag.",
    ]);
    expect(wordsOf({ fitted: [value("mass")] }, { dragPerMps_frac: 0.12 })).toEqual([]);
  });

  it("has the ammeter's zero beside the accessories, unless it was seen at rest", () => {
    const words = "The ammeter’s zero cannot be told from the accessories: 0.2 A of it would be 20 W.";
    expect(wordsOf({ fitted: [value("accessories")] }, { isZeroKnown: false })).toEqual([
      `${words} With the car switched off it should show 0.`,
    ]);
    expect(wordsOf({ fitted: [value("accessories")] })).toEqual([]);
    expect(wordsOf({ fitted: [value("mass")] }, { isZeroKnown: false })).toEqual([]);
  });

  it("ends with what is left as in the job", () => {
    expect(wordsOf({ left: ["regen", "zero"] })).toEqual([
      "Left as in the job, since this log does not show them: the limit on braking by the motor, the ammeter’s zero.",
    ]);
  });
});
