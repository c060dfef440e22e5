import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { isolation_ohm, settingsCautions } from "../../../../sim/plan/settings/settingsCautions.ts";

describe("cautions", () => {
  it("ask for 100 ohm a volt before first power", () => {
    // [UNR100, 5.1.3.1]: 400 V are 40 kohm, 120 V are 12 kohm.
    expect(isolation_ohm(400)).toBe(40_000);
    expect(isolation_ohm(120)).toBe(12_000);
    expect(messageIn(settingsCautions(400)[1], "metric")).toMatch(/at least 40 kΩ \(100 ohm for each volt/);
  });

  it("name what can hurt, and who decides", () => {
    const text = settingsCautions(126)
      .map((each) => messageIn(each, "metric"))
      .join(" ");
    for (const words of [
      /can kill: above 60 V/,
      /local rule; UN R100 and ISO 6469-3/,
      /prove dead/,
      /brake lamps with regen/,
    ])
      expect(text).toMatch(words);
    for (const words of [/restraint/, /waste of lithium/, /licensed electrician/]) expect(text).toMatch(words);
    expect(messageIn(settingsCautions(60)[0], "metric")).toMatch(/^60 V is not above 60 V/);
  });
});
