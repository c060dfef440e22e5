import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { Spread } from "../../../../sim/plan/vary/spread.ts";
import type { VariedInput, VariedPack } from "../../../../sim/plan/vary/varyPack.ts";
import { varyWords } from "../../../../sim/plan/vary/varyWords.ts";

const spread = (p5: number, p50: number, p95: number) => ({ p5, p50, p95 }) as Spread;
const homes = (tenYearsWinter: number) => ({ new: 1, winter: 1, tenYearsWinter });
const input = (gain_km: number, path?: string) =>
  ({ gain_km, ...(path !== undefined && { open: { path } }) }) as VariedInput;

const varied = (changes: Partial<VariedPack> = {}): VariedPack => ({
  pack: "20 kWh",
  driving: 64,
  variants: 64,
  left_km: { new: spread(30, 40, 50), winter: spread(20, 25, 30), tenYearsWinter: spread(-2.5, 4, 9.7) },
  home_frac: homes(0.834),
  inputs: [input(5.4, "vehicle.tyres.rolling_coeff")],
  ...changes,
});
const wordsOf = (changes: Partial<VariedPack> = {}) =>
  varyWords(varied(changes)).map((each) => messageIn(each, "metric"));

describe("what many variants of a pack come to, in sentences", () => {
  it("is how often it comes home on the deciding day, and between what in nine cases of ten", () => {
    expect(wordsOf()[0]).toBe(
      "20 kWh: on the usual day at ten years in winter it comes home in 83 of 100 cases; what is left lies between 3 km short and 9 km left in nine cases of ten.",
    );
    const often = (share: number) => / it comes home (.*?);/.exec(wordsOf({ home_frac: homes(share) })[0])?.[1];
    expect([1, 0.996, 0.994, 0.006, 0.004, 0].map(often)).toEqual([
      "always",
      "always",
      "in 99 of 100 cases",
      "in 1 of 100 cases",
      "never",
      "never",
    ]);
  });

  it("has the variants in which the car does not drive its road, where there are any", () => {
    expect(wordsOf({ driving: 60 })[1]).toBe("In 4 of 64 variants the car does not drive this road.");
    expect(wordsOf()).toHaveLength(2);
    const { left_km: _, ...none } = varied({ driving: 0 });
    expect(varyWords(none).map((each) => messageIn(each, "metric"))).toEqual([
      "20 kWh: the car does not drive this road in any of 64 variants.",
    ]);
  });

  it("ends with what to measure first and what that is worth, half a kilometre at least", () => {
    const last = (...inputs: readonly VariedInput[]) => wordsOf({ inputs }).at(-1);
    expect(last(input(5.4, "vehicle.tyres.rolling_coeff"), input(9, "vehicle.kerb_kg"))).toBe(
      "Measure first: a coast-down; what is left would be known better by 5 km.",
    );
    expect(last(input(5.4))).toBe(
      "Most of it is the road: with more days of the log what is left would be known better by 5 km.",
    );
    expect(last(input(0.6))).toMatch(/ better by 1 km\.$/);
    expect(last(input(0.4, "vehicle.kerb_kg"))).toBe("No single measurement would narrow that to speak of.");
    expect(last()).toBe("Nothing that the range hangs on is open.");
  });
});
