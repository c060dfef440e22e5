import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { readBands } from "../../../../sim/plan/coastDown/readBands.ts";

const MPH = 0.44704;
const problemsOf = (text: string) => {
  try {
    readBands(text, "--bands");
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ code, message }) => `${code}: ${message}`);
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("bands as a workshop writes them", () => {
  it("with a time each", () => {
    expect(readBands("60-50 mph 9.6 s; 30-20 mph 19.8 s", "x")).toEqual([
      { high_mps: 60 * MPH, low_mps: 50 * MPH, there_s: [9.6], back_s: [] },
      { high_mps: 30 * MPH, low_mps: 20 * MPH, there_s: [19.8], back_s: [] },
    ]);
  });
  it("with several runs each way, the unit once, and the slower band first", () => {
    expect(readBands("40 to 20 km/h in 21 s; 80–60: 14,2, 14,6 sec / 15.0 14.8 s", "x")).toEqual([
      { high_mps: 80 / 3.6, low_mps: 60 / 3.6, there_s: [14.2, 14.6], back_s: [15, 14.8] },
      { high_mps: 40 / 3.6, low_mps: 20 / 3.6, there_s: [21], back_s: [] },
    ]);
  });
  it("that meet at one speed", () => expect(readBands("60-50 mph 9 s; 50-40 mph 11 s", "x")).toHaveLength(2));
});

describe("bands refused, each with its sentence", () => {
  it.each([
    ["", /^bands-empty: found no band, "60-50 mph/],
    ["60-50 9.6 s", /^band-unit: found "60-50 9.6 s" without a unit of speed: mph or km\/h\?/],
    ["50-60 mph 9.6 s", /^band-rises: found "50-60 mph 9.6 s", a band goes from the higher speed to the lower one/],
    ["60-50 mph 0 s", /^band-time: .* times above 0 and up to 600 s are wanted/],
    ["60-50 mph soon", /^band-time/],
    ["60-50 mph 9.6 / s", /^band-time/],
    ["quick then slow", /^band-unreadable: found "quick then slow", a band is written "60-50 mph 9.6 s"/],
    ["60-40 mph 20 s; 50-30 mph 24 s", /^bands-overlap: .* overlap: the same seconds would count twice/],
  ])("%j", (text, message) => {
    expect(problemsOf(text)[0]).toMatch(message);
  });

  it("all of them at once", () => expect(problemsOf("60-50 9 s; 20-30 mph 4 s; hm")).toHaveLength(3));

  it("of any length, without taking long over it", () => {
    expect(problemsOf(`60-50 mph ${"1 ".repeat(100_000)}x`)).toHaveLength(1);
    expect(problemsOf("1".repeat(100_000))).toHaveLength(1);
  });
});
