import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { coastDownNotes } from "../../../../sim/plan/coastDown/coastDownNotes.ts";
import type { CoastBand, CoastDown } from "../../../../sim/vehicle/coastDown/evaluateCoastDown.ts";

/** As a metric reader has them. */
const said = (...given: Parameters<typeof coastDownNotes>) =>
  coastDownNotes(...given).map((note) => messageIn(note, "metric"));
const value = (at: number) => ({ value: at, low: at, high: at });
/** A result with a drag area in square metres, a rolling coefficient and what the law misses the times by. */
function resultOf(drag_m2: number, rolling: number, residual_s = 0): CoastDown {
  const fit = { f0_N: 150, f1_Npmps: 0, f2_Npmps2: 0.5, terms: 2 as const, covariance: [], residual_s };
  const forces = { f0_N: value(150), f1_Npmps: value(0), f2_Npmps2: value(0.5) };
  return { ...forces, dragArea_m2: value(drag_m2), rolling_coeff: value(rolling), mass_kg: 1400, fit };
}
const bands: CoastBand[] = [
  { high_mps: 80 / 3.6, low_mps: 60 / 3.6, there_s: [10, 10.9], back_s: [10.5] },
  { high_mps: 40 / 3.6, low_mps: 20 / 3.6, there_s: [15], back_s: [] },
];
const notesOf = (drag_m2: number, rolling: number, of = bands) => said(of, resultOf(drag_m2, rolling));

it("always says what is in the result and what is not, and no more of a plausible one", () => {
  const notes = notesOf(0.9, 0.012);
  expect(notes).toHaveLength(1);
  expect(notes[0]).toMatch(/^in it: tyres, wheel bearings.* Not in it: the drag at the gearbox input$/);
});

describe("figures of hardly any car", () => {
  it.each([
    [0.39, 0.012],
    [6.1, 0.012],
    [0.9, 0.0049],
    [0.9, 0.051],
  ])("such as %d m² and %d are asked about", (drag_m2, rolling) => {
    expect(notesOf(drag_m2, rolling)[0]).toBe(
      `a drag area of ${drag_m2} m² and a rolling coefficient of ${rolling} are those of hardly any car: were the speeds mph and read as km/h, or the other way round? Is the mass right?`,
    );
  });
  it.each([
    [0.4, 0.005],
    [6, 0.05],
  ])("are not %d m² and %d themselves", (drag_m2, rolling) => expect(notesOf(drag_m2, rolling)).toHaveLength(1));
});

describe("figures of few cars", () => {
  const ofCar = (drag_m2: number, rolling: number, mass_kg = 950) =>
    said(bands, { ...resultOf(drag_m2, rolling), mass_kg });
  it("that would be usual in the other unit of speed are asked about, with what they would be", () => {
    // 0.84 m² and 0.0173 with miles read as kilometres: drag 1.609 times, rolling 1/1.609.
    expect(ofCar(0.84 * 1.609344, 0.0173 / 1.609344)[0]).toBe(
      "a drag area of 1.35 m² and a rolling coefficient of 0.0107 are those of few cars of this mass: were the speeds mph? They would then be 0.84 m² and 0.0173, as most cars have",
    );
    expect(ofCar(0.7 / 1.609344, 0.015 * 1.609344)[0]).toMatch(
      /: were the speeds km\/h\? They would then be 0\.7 m² and 0\.015, as most cars have$/,
    );
  });
  it("are not asked about where the other unit would not make them usual, nor where the car is heavy enough for them", () => {
    expect(ofCar(0.84, 0.0173)).toHaveLength(1);
    expect(ofCar(1.35, 0.03)).toHaveLength(1);
    expect(ofCar(1.7, 0.018, 1600)).toHaveLength(1);
  });
});

it("says so where no band was driven both ways", () => {
  const oneWay = bands.map((band) => ({ ...band, back_s: [] }));
  expect(notesOf(0.9, 0.012, oneWay)[0]).toMatch(/^the direction of each run is not known or only one was driven/);
});

it("names each band whose runs of one way differ by more than a tenth, and by how much", () => {
  const disturbed = [
    { ...bands[0], there_s: [10, 11.4, 10.2], back_s: [20, 22.6] },
    { ...bands[1], there_s: [15, 16.4] },
  ];
  expect(notesOf(0.9, 0.012, disturbed).slice(0, -1)).toEqual([
    "the runs from 80 km/h to 60 km/h differ by 14 %: look for wind, traffic or a slope",
    "the runs from 80 km/h to 60 km/h differ by 13 %: look for wind, traffic or a slope",
  ]);
});

it("says by how much the law misses the times, where it does", () => {
  expect(said(bands, resultOf(0.9, 0.012, 0.347))[0]).toBe(
    "the law misses the measured times by 0.35 s (root mean square)",
  );
});
