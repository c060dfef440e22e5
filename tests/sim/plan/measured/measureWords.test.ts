import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { Fitted } from "../../../../sim/plan/measured/describeFit.ts";
import { differs, fittedWords, verdictOf, verdictWords } from "../../../../sim/plan/measured/measureWords.ts";

describe("the trade's rule on what was used over what was predicted", () => {
  it("is good within a tenth either way, to be explained within two, wrong beyond", () => {
    const verdicts = (...measured: readonly number[]) => measured.map((each) => verdictOf(each, 100));
    expect(verdicts(91, 109)).toEqual(["good", "good"]);
    expect(verdicts(89, 111, 81, 119)).toEqual(["find out", "find out", "find out", "find out"]);
    expect(verdicts(79, 121)).toEqual(["wrong", "wrong"]);
  });
});

describe("what the whole drive used", () => {
  const words = (measured_Whpkm: number) => messageIn(verdictWords(measured_Whpkm, 200, "predicted"), "metric");
  it("is said with how much more or less it is, and what that means", () => {
    expect(words(214)).toBe("Logged 214 Wh/km, predicted 200 Wh/km: 7 % more. Within 10 %: a good prediction.");
    expect(words(170)).toBe(
      "Logged 170 Wh/km, predicted 200 Wh/km: 15 % less. Between 10 and 20 %: there is a reason; find it.",
    );
    expect(words(260)).toMatch(/: 30 % more\. Above 20 %: something is wrong with the car or with an input\.$/);
  });
  it("is the same within half a per cent", () => {
    expect(words(200.9)).toMatch(/: the same\. Within 10 %/);
    expect(words(199.1)).toMatch(/: the same\./);
    expect(words(201.1)).toMatch(/: 0\.55 % more\./);
  });
});

/** A value that came out as `value`, its band from `low` to `high`, all of that the log's own. */
function fitted(low: number, value: number, high: number, changes: Partial<Fitted> = {}): Fitted {
  const rolling = { id: "rolling", value, low, high, ownHalf: (high - low) / 2, start: 1, before: 0.3 };
  return { ...rolling, ...changes } as Fitted;
}
const words = (of: Fitted, accessories_W = 200) => messageIn(fittedWords(of, accessories_W), "metric");

describe("a corrected value", () => {
  it("differs where its whole band lies on one side of the job's", () => {
    expect(differs(fitted(1.01, 1.1, 1.19))).toBe(true);
    expect(differs(fitted(0.81, 0.9, 0.99))).toBe(true);
    expect(differs(fitted(0.99, 1.1, 1.21))).toBe(false);
    expect(differs(fitted(0.79, 0.9, 1.01))).toBe(false);
    const drawn = (low: number, high: number) =>
      differs(fitted(low, (low + high) / 2, high, { id: "accessories", start: 0 }));
    expect([drawn(1, 20), drawn(-20, -1), drawn(0, 20), drawn(-20, 0)]).toEqual([true, true, false, false]);
  });
  it("is said with its band and what to look at on the car", () => {
    expect(words(fitted(1.05, 1.1, 1.16))).toBe(
      "Rolling resistance: 10 % more than in the job (5 to 16 % more): jack each wheel up and spin it, since a brake may drag; tyre pressures, wheel alignment, wheel bearings.",
    );
    expect(words(fitted(0.84, 0.9, 0.95, { id: "drag" }))).toBe(
      "Air drag: 10 % less than in the job (5 to 16 % less): wind from behind on the day, or a frontal area taken too large.",
    );
  });
  it("is not shown to differ where its band holds the job's", () => {
    expect(words(fitted(0.97, 1.03, 1.09))).toBe(
      "Rolling resistance: this log does not show that it differs from the job (3 % less to 9 % more).",
    );
    expect(words(fitted(1, 1.03, 1.09))).toMatch(/\(0 to 9 % more\)/);
    expect(words(fitted(0.9, 0.96, 1))).toMatch(/\(0 to 10 % less\)/);
  });
  it("tells the log's own share apart where the band is three tenths wider than that", () => {
    const mixed = (ownHalf: number) => words(fitted(1.05, 1.18, 1.31, { ownHalf }));
    // The band is 0.26 wide: 1.3 times 0.2, twice 0.1.
    expect(mixed(0.101)).toMatch(/than in the job \(5 to 31 % more\): /);
    expect(mixed(0.099)).toMatch(/ \(8 to 28 % more (if|with all) .*, 5 to 31 % more (with|by) .*\): jack each wheel/);
  });
});

describe("the draw of the accessories", () => {
  const drawn = (low: number, value: number, high: number) =>
    words(fitted(low, value, high, { id: "accessories", start: 0 }));
  it("is said in watts beside the job's, with what to look at where it differs", () => {
    expect(drawn(80, 100, 120)).toBe(
      "Draw of the accessories: 300 W (280 to 320 W) against 200 W in the job: what stays on? Switch the heater, lights and DC-DC converter off one at a time and watch the amps.",
    );
    expect(drawn(-120, -100, -80)).toBe(
      "Draw of the accessories: 100 W (80 to 120 W) against 200 W in the job: less was on than the job has.",
    );
    expect(drawn(-20, 10, 40)).toBe(
      "Draw of the accessories: 210 W (180 to 240 W) against 200 W in the job: as in the job.",
    );
  });
  it("is never below nothing", () => {
    expect(drawn(-300, -190, -80)).toMatch(/: 10 W \(0 to 120 W\) against/);
  });
});
