import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { PackFound } from "../../../../sim/plan/measured/packFromLog.ts";
import { packWords } from "../../../../sim/plan/measured/packWords.ts";

const base: PackFound = { predicted_ohm: 0.1, predicted_Ah: 100, used_frac: 0.4 };
const band = (low: number, value: number, high: number) => ({ low, value, high });
const words = (changes: Partial<PackFound>, aged_frac = 0.8) =>
  packWords({ ...base, ...changes }, aged_frac).map((each) => messageIn(each, "metric"));

describe("the capacity that a drive shows", () => {
  const capacity = (low: number, value: number, high: number) =>
    words({ capacity_Ah: band(low, value, high) })[0].replace(/^.* of it\. /, "");
  it("is said with its band beside the job's", () => {
    expect(words({ capacity_Ah: band(88, 91, 94) })[0]).toBe(
      "The pack holds 91 Ah (88 Ah to 94 Ah) by its volts over this drive, 100 Ah in the job: 91 % of it. At ten years the job allows for 80 %.",
    );
  });
  it("is below what is allowed for at ten years for certain, maybe, or not", () => {
    expect(capacity(70, 75, 79)).toBe(
      "That is below what the job allows for at ten years, 80 %: test the modules one by one.",
    );
    expect(capacity(70, 75, 80)).toBe(
      "That may be below what the job allows for at ten years, 80 %: test the modules one by one.",
    );
    expect(capacity(77, 79.9, 82)).toMatch(/^That may be below/);
    expect(capacity(77, 80, 83)).toBe("At ten years the job allows for 80 %.");
  });
  it("is not shown by a drive that used little of the charge, nor by one that gained some", () => {
    expect(words({ used_frac: 0.08 })[0]).toBe(
      "This drive used 8 % of the charge and its volts do not tell the capacity: a log from nearly full to nearly empty would.",
    );
    expect(words({ used_frac: -0.02 })[0]).toMatch(/^This drive used 0 % of the charge/);
  });
});

describe("the resistance that a drive shows", () => {
  const resistance = (low: number, value: number, high: number) =>
    words({ resistance_ohm: band(low, value, high) })[1].replace(/^.* in the job/, "");
  it("is said in milliohms with its band beside the job's", () => {
    expect(words({ resistance_ohm: band(0.095, 0.1, 0.105) })[1]).toBe(
      "The pack’s resistance is 100 mΩ (95 mΩ to 105 mΩ) by its steps, 100 mΩ in the job.",
    );
  });
  it("is more where all of its band is a tenth above the job's, less where all of it is a tenth below", () => {
    expect(resistance(0.111, 0.12, 0.13)).toBe(
      ": more than that; cold cells, or a poor joint (feel every lug after a hard drive).",
    );
    expect(resistance(0.109, 0.12, 0.13)).toBe(".");
    expect(resistance(0.07, 0.08, 0.089)).toBe(": less than that.");
    expect(resistance(0.07, 0.08, 0.091)).toBe(".");
  });
  it("is not shown by volts that do not step", () => {
    expect(words({})[1]).toBe("Volts and amps do not step together often enough to show the pack’s resistance.");
  });
});
