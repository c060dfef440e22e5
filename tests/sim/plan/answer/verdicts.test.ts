import { expect, it } from "vitest";
import { message } from "../../../../shared/quantity/message.ts";
import { verdicts } from "../../../../sim/plan/answer/verdicts.ts";

type Judged = Parameters<typeof verdicts>[0][number];

const one = (value: number) => ({ value, low: value, high: value });

/** A pack that comes home with so many kilometres at ten years in winter, at the least and as taken. */
function pack(usable_kWh: number, low_km: number, value_km: number, changes: Partial<Judged> = {}): Judged {
  const tenYearsWinter = { value: value_km, low: low_km, high: value_km + 5 };
  return {
    name: `${usable_kWh} kWh`,
    mass_kg: 100,
    testMass_kg: 1000,
    usable_kWh,
    left: { new: one(90), winter: one(40), tenYearsWinter },
    isAtLeast: false,
    unmet: [],
    mayFail: [],
    ...changes,
  };
}
const verdict = (judged: Judged, isBandKnown = true) => verdicts([judged], isBandKnown)[0];

it("goes by what is left at ten years in winter: below nought as taken, below nought at its least, or neither", () => {
  expect(verdict(pack(10, -3, -1))).toBe("not enough");
  expect(verdict(pack(10, -3, 1))).toBe("only just");
  expect(verdict(pack(10, 0, 1))).toBe("enough");
  expect(verdict(pack(10, 0, 0))).toBe("enough");
});

it("is enough only where no value it may have would keep the car from driving", () => {
  expect(verdict(pack(10, 5, 8, { mayFail: [{ path: "environment.grip_coeff", value: 0.2 }] }))).toBe("only just");
});

it("is not enough where the car does not drive the road, or no range is known", () => {
  expect(verdict(pack(10, 5, 8, { cannot: message`The car does not start.` }))).toBe("not enough");
  const { left: _, ...without } = pack(10, 5, 8);
  expect(verdict(without)).toBe("not enough");
});

it("is none for a pack that may not be used, however far it would go", () => {
  const stop = { why: message`too heavy`, remedy: message`take less` } as unknown as NonNullable<Judged["stop"]>;
  expect(verdict(pack(10, 5, 8, { stop }))).toBeUndefined();
});

it("is none before the band is known, unless nothing in it can change the verdict", () => {
  expect(verdict(pack(10, 1, 2), false)).toBeUndefined();
  expect(verdict(pack(10, -3, -1), false)).toBe("not enough");
});

it("is more than enough where a smaller pack is enough, and not where it is only just so, or as large", () => {
  expect(verdicts([pack(10, 1, 2), pack(15, 9, 12), pack(20, 20, 25)], true)).toEqual([
    "enough",
    "more than enough",
    "more than enough",
  ]);
  expect(verdicts([pack(10, -1, 2), pack(15, 9, 12)], true)).toEqual(["only just", "enough"]);
  expect(verdicts([pack(10, 1, 2), pack(10, 9, 12)], true)).toEqual(["enough", "enough"]);
});
