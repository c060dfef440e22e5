import { describe, expect, it } from "vitest";
import { NM_PER_LBFT, RADPS_PER_RPM } from "../../../../shared/units.ts";
import { settleAxes } from "../../../../sim/plan/motorMap/mapCells.ts";

const raw = [
  { down: 100, across: 10, value: 0.8, line: 2 },
  { down: 300, across: 20, value: 0.9, line: 3 },
];
const flipped = raw.map(({ down, across, ...rest }) => ({ down: across, across: down, ...rest }));
type Axes = Parameters<typeof settleAxes>[1];
const axes = (downIs: Axes["downIs"], down = "", across = ""): Axes => ({ downIs, down, across });
const settled = (of: typeof raw, named: Axes, words = "", texts: readonly string[][] = []) =>
  settleAxes(
    of,
    named,
    words,
    texts.map((row, i) => ({ line: i, texts: row })),
  );
const places = ({ cells }: ReturnType<typeof settled>) =>
  cells.map(({ speed_rpm, torque_Nm }) => [speed_rpm, torque_Nm]);

describe("which axis is speed", () => {
  it("is what the words say, without a word about it", () => {
    const found = settled(raw, axes("speed"));
    expect(found.notes).toEqual([]);
    expect(found.cells).toEqual([
      { speed_rpm: 100, torque_Nm: 10, value: 0.8, line: 2 },
      { speed_rpm: 300, torque_Nm: 20, value: 0.9, line: 3 },
    ]);
    expect(places(settled(flipped, axes("torque")))).toEqual(places(found));
  });
  it("is the one with the larger numbers where no words say, and that is said", () => {
    expect(settled(raw, axes(undefined)).notes).toEqual([
      "no words say which axis is speed: taken as the one down, with the larger numbers",
    ]);
    const across = settled(flipped, axes(undefined));
    expect(across.notes[0]).toContain("the one across");
    expect(places(across)).toEqual(places(settled(raw, axes("speed"))));
    // As large: down. By size, whatever the sign.
    expect(
      settled(
        raw.map((cell) => ({ ...cell, across: cell.down })),
        axes(undefined),
      ).notes[0],
    ).toContain("down");
    expect(
      settled(
        raw.map((cell) => ({ ...cell, across: -1000 })),
        axes(undefined),
      ).notes[0],
    ).toContain("across");
  });
  it("is the other one where the words would have a motor with more newton metres than turns", () => {
    const found = settled(raw, axes("torque"));
    expect(found.notes).toEqual([
      "speed and torque stood in each other's place (300 as a torque in Nm, 20 as a top speed in rpm): changed over",
    ]);
    expect(places(found)).toEqual(places(settled(raw, axes("speed"))));
    const same = raw.map((cell) => ({ ...cell, across: cell.down }));
    expect(settled(same, axes("torque")).notes).toEqual([]);
  });
});

describe("units", () => {
  it("are radians a second and pound-feet where the words of the axis say so", () => {
    const { cells, notes } = settled(raw, axes("speed", "rad/s", "lb ft"));
    expect(cells[1].speed_rpm).toBeCloseTo(300 / RADPS_PER_RPM, 9);
    expect(cells[1].torque_Nm).toBeCloseTo(20 * NM_PER_LBFT, 9);
    expect(notes).toEqual(["speeds read in rad/s", "torques read in lb ft"]);
  });
  it("are each read of its own axis, whichever way it runs", () => {
    const { cells } = settled(flipped, axes("torque", "ft lb", "rad/s"));
    expect(cells[1].speed_rpm).toBeCloseTo(300 / RADPS_PER_RPM, 9);
    expect(cells[1].torque_Nm).toBeCloseTo(20 * NM_PER_LBFT, 9);
  });
  it("count before speeds are held against torques", () => {
    // 30 rad/s are 286 rpm, more than 200 Nm.
    const slow = raw.map((cell) => ({ ...cell, down: 30, across: 200 }));
    expect(settled(slow, axes("speed", "rad/s")).notes).toEqual(["speeds read in rad/s"]);
    expect(settled(slow, axes("speed")).notes[0]).toContain("changed over");
    // 200 lb ft are 271 Nm.
    const strong = raw.map((cell) => ({ ...cell, down: 250, across: 200 }));
    expect(settled(strong, axes("speed", "", "lb ft")).notes[0]).toContain("changed over");
  });
});

describe("what the values are", () => {
  const valuesOf = (words: string, texts: readonly string[][] = []) => settled(raw, axes("speed"), words, texts).values;
  it.each([
    ["losses", "W"],
    ["heat in kW", "kW"],
    ["efficiency (%)", "percent"],
    ["per cent", "percent"],
    ["eff.", "efficiency"],
    ["eta", "efficiency"],
    ["η", "efficiency"],
    ["beta", undefined],
    ["", undefined],
  ] as const)("is read of %j as %s", (words, values) => expect(valuesOf(words)).toBe(values));

  it("is percent where any cell has its sign, and losses before that", () => {
    const cells = [
      ["rpm", "10"],
      ["1000", "80 %"],
    ];
    expect(valuesOf("", cells)).toBe("percent");
    expect(valuesOf("loss", cells)).toBe("W");
    expect(valuesOf("eff", [["1000", "80"]])).toBe("efficiency");
  });
});
