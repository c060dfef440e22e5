import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { fuelCheck, fuelCheckWords } from "../../../../sim/plan/going/fuelCheck.ts";
import { demoJob } from "../../../support/demoJob.ts";

const { costs } = demoJob();
const recorded = (use_l100km: number, fuel: "petrol" | "diesel", road_Whpkm: number, plusMinus_frac = 0) => {
  if (!costs?.running) throw new Error("the demo has running costs");
  const origin = { from: "measured" as const, plusMinus_frac };
  const origins = plusMinus_frac > 0 ? { "costs.running.use_l100km": origin } : {};
  return fuelCheck({ costs: { ...costs, running: { ...costs.running, use_l100km, fuel } }, origins }, road_Whpkm);
};

describe("the fuel record beside the road", () => {
  it("is litres times heat times the share that reaches the wheels", () => {
    // 10 l of petrol at 8.9 kWh carry 890 Wh for each km; a tenth is 89, 22 % is 195.8.
    expect(recorded(10, "petrol", 120)).toMatchObject({
      tank_Whpkm: expect.closeTo(890, 9),
      wheelLow_Whpkm: expect.closeTo(89, 9),
      wheelHigh_Whpkm: expect.closeTo(195.8, 9),
      verdict: "agrees",
    });
    // 8 l of diesel at 10 kWh: 800 Wh, of which 120 to 240.
    expect(recorded(8, "diesel", 120)).toMatchObject({
      wheelLow_Whpkm: expect.closeTo(120, 9),
      wheelHigh_Whpkm: expect.closeTo(240, 9),
    });
  });

  it.each([
    [88, "roadAsksLess"],
    [90, "agrees"],
    [195, "agrees"],
    [197, "roadAsksMore"],
  ])("with a road of %i Wh/km: %s", (road_Whpkm, verdict) => {
    expect(recorded(10, "petrol", road_Whpkm)?.verdict).toBe(verdict);
  });

  it("is widened by the band of the record", () => {
    expect(recorded(10, "petrol", 85, 0.1)).toMatchObject({
      wheelLow_Whpkm: expect.closeTo(80.1, 9),
      verdict: "agrees",
    });
  });

  it("is nothing without a record, or on a road that is not driven", () => {
    expect(fuelCheck({ costs: undefined, origins: {} }, 120)).toBeUndefined();
    expect(recorded(10, "petrol", 0)).toBeUndefined();
  });

  it("is a sentence in the reader's units, that says it is a cross-check", () => {
    const check = recorded(10, "petrol", 120);
    expect(check && messageIn(fuelCheckWords(check), "metric")).toBe(
      "By the fuel record, a cross-check and no more: 10 l/100 km of petrol is 890 Wh/km in the tank, of which an old engine brings 10 % to 22 % to the wheels (common practice, no source), 89 Wh/km to 200 Wh/km; this road asks for 120 Wh/km there: the two agree.",
    );
    // 282.48 over litres a hundred kilometres: miles to the imperial gallon.
    expect(check && messageIn(fuelCheckWords(check), "british")).toMatch(/^.*: 28\.2 mpg .*of petrol is 1430 Wh\/mile/);
  });
});
