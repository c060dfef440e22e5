import { describe, expect, it } from "vitest";
import { message, messageIn, quantity as q } from "../../../shared/quantity/message.ts";

describe("a sentence with quantities", () => {
  const sentence = message`Goes ${q("distance", 70.14)} with ${"13 kWh"}, ${q("fraction", 0.025, 2)} more for ${42.26} s.`;

  it("is said in the units of whoever reads it, rounded once and not twice", () => {
    expect(messageIn(sentence, "metric")).toBe("Goes 70.1 km with 13 kWh, 2.5 % more for 42.3 s.");
    // 70.14/1.609344 = 43.583
    expect(messageIn(sentence, "british")).toBe("Goes 43.6 miles with 13 kWh, 2.5 % more for 42.3 s.");
    // 1.4449 km = 0.89782 miles; from the rounded 1.44 km it would be 0.895.
    expect(messageIn(message`${q("distance", 1.4449)}`, "american")).toBe("0.898 miles");
  });

  it("takes sentences into sentences", () => {
    const held = message`the motor for ${12} s`;
    expect(messageIn(message`Held back by ${held}.`, "metric")).toBe("Held back by the motor for 12 s.");
  });
});
