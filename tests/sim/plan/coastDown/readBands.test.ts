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
  it("with the slash between the directions close by", () => {
    expect(readBands("60-50 mph 9.6/10.1 s", "x")[0]).toMatchObject({ there_s: [9.6], back_s: [10.1] });
  });
  it("in metres a second too, and with the unit behind the first speed", () => {
    expect(readBands("20-10 m/s 30 s; 9 m/s - 5 12 s", "x")).toEqual([
      { high_mps: 20, low_mps: 10, there_s: [30], back_s: [] },
      { high_mps: 9, low_mps: 5, there_s: [12], back_s: [] },
    ]);
  });
  it("up to sixty of them, of up to 600 s each", () => {
    const written = (count: number) =>
      Array.from({ length: count }, (_, i) => `${100 - i}-${99 - i} km/h 600 s`).join(";");
    expect(readBands(written(60), "x")).toHaveLength(60);
    expect(problemsOf(written(61))[0]).toBe("bands-many: found 61 bands, at most 60 are read");
    expect(problemsOf("60-50 mph 601 s")[0]).toMatch(/^band-time/);
    expect(readBands("60-50 mph 0.5 s", "x")[0].there_s).toEqual([0.5]);
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

  it("with what was found, short", () => {
    expect(problemsOf(`${"a".repeat(60)}`)[0]).toContain(`"${"a".repeat(60)}"`);
    expect(problemsOf(`${"a".repeat(61)}`)[0]).toContain(`"${"a".repeat(60)}…"`);
  });

  it("of any length, without taking long over it", () => {
    expect(problemsOf(`60-50 mph ${"1 ".repeat(100_000)}x`)).toHaveLength(1);
    expect(problemsOf("1".repeat(100_000))).toHaveLength(1);
  });
});
