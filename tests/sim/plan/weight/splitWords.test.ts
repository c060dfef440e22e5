import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { heaviestPack_kg, splitWords } from "../../../../sim/plan/weight/splitWords.ts";
import { type Written, weightsOf } from "./weighedByHand.ts";

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
