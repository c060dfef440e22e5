import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { cautionsAt } from "../../../../sim/plan/charging/cautions.ts";
import { socketOf } from "../../../support/chargeable.ts";

const words = (...args: Parameters<typeof cautionsAt>) => cautionsAt(...args).map((said) => messageIn(said, "metric"));
const household = socketOf(10, { kind: "household", mode: "mode2" });

describe("at a household socket", () => {
  it("a charge of three hours and more is one at full current for hours", () => {
    expect(words(household, 3)[0]).toMatch(/^Supply: up to 3 h at 10 A\. A household socket is not made for hours/);
    expect(words(household, 2.9)[0]).toMatch(
      /^Supply: a household socket heats at 10 A where contacts or wiring are old/,
    );
  });
  it("nothing is said of mode 1 where the lead has its own protection", () => {
    expect(words(household, 9)).toHaveLength(1);
    expect(words({ ...household, mode: "mode1" }, 9)[1]).toMatch(/^Supply: mode 1 has nothing in the lead/);
  });
});

it("at a wall unit is a circuit of its own, however long the charge", () => {
  for (const longest_h of [1, 9])
    expect(words(socketOf(32), longest_h)).toEqual([
      "Supply: 32 A for hours needs a circuit of its own with its own protection (40 A where the American code holds), and a main fuse that stands it beside everything else. Local codes and a licensed electrician decide.",
    ]);
  expect(words(socketOf(32, { mode: "mode1" }), 1)).toHaveLength(2);
});
