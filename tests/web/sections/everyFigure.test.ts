import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { quarterHours } from "../../../shared/quantity/quarterHours.ts";
import { M_PER_KM, S_PER_MIN, unitSuffixes, W_PER_KW } from "../../../shared/units.ts";
import type { Channels } from "../../../sim/index.ts";
import { chapters } from "../../../web/chapters/index.ts";
import { threeFigures } from "../../../web/charts/parts/figure/threeFigures.ts";
import { csvText } from "../../../web/charts/parts/reading/save.ts";
import { sections } from "../../../web/sections/index.ts";
import type { Figure } from "../../../web/sections/parts/section.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { csvOf } from "../../support/csvOf.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** Charts of the workshop's own: lines against time and distance, dots coloured by a third, dots by pack. */
const charts: Values["charts"] = [
  { x: "time", y: "batteryCurrent", packs: [], caption: "" },
  { x: "distance", y: "motorPower", packs: [], caption: "" },
  { x: "motorSpeed", y: "motorTorque", colour: "motorLoss", packs: [], caption: "" },
  { x: "batteryCurrent", y: "batteryVoltage", packs: [], caption: "" },
];

/** Every figure that chapters and workings have of these values, by chapter or working and place in it. */
function figuresOf(values: Values): [string, Figure][] {
  const on = drawing(640);
  const ofChapters = chapters.flatMap((chapter) => {
    const figure = chapter.plot(chapter.compute(values as never) as never, on);
    return figure ? [[chapter.name, figure] as [string, Figure]] : [];
  });
  const ofWorkings = sections.flatMap((section) =>
    [...section.plot(section.compute(values as never) as never, on)].flatMap((each, i) =>
      "chart" in each ? [[`${section.name} ${i}`, each] as [string, Figure]] : [],
    ),
  );
  return [...ofChapters, ...ofWorkings];
}

describe.each(demos.map(({ id }, which) => [id, which] as const))("%s", (_, which) => {
  const values = sectionValues(demoJob(which), { charts });
  const figures = figuresOf(values);

  it("has figures of every kind", () => {
    expect(figures.length).toBeGreaterThanOrEqual(16);
  });

  it.each(figures)("%s asks one question, has units on its axes and tells its numbers in words", (_name, figure) => {
    const { caption, chart } = figure;
    // One question, or what the axes of a chart of one's own are.
    expect(caption).toMatch(/^[A-Z][^?]*\?[^?]*$| against /);
    const labels = [...chart.svg.querySelectorAll("text")].map((each) => each.textContent ?? "");
    // On its axis, or where a single bar has none, beside its total.
    expect(labels.some((each) => /\(\S+\)|\d [A-Za-z]+\/[A-Za-z]+ from the pack$/.test(each))).toBe(true);
    expect(chart.alt).toMatch(
      /\d[\d.\u202f]*[ \u00a0](km|m|km\/h|kWh?|Wh\/km|N|Nm|A|V|s|min|h|rpm|%|days?|years?|GBP|EUR)\b|\d[ \u00a0]°[CF]/,
    );
  });

  it.each(figures)("%s is saved as whole rows of numbers under headings with their units", (_name, { chart }) => {
    const { names, rows } = csvOf(csvText(chart.table));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row.length).toBe(names.length);
      expect(row.join()).not.toMatch(/NaN|Infinity|undefined|null/);
    }
    names.forEach((name, k) => {
      const isNumber = rows.every((row) => row[k] !== "" && Number.isFinite(Number(row[k])));
      if (isNumber) expect([...unitSuffixes, "number"]).toContain(name.split("_").at(-1));
    });
  });

  it("tells in words the numbers that are in its tables", () => {
    let [told, missing] = [0, 0];
    for (const [name, { chart }] of figures) {
      const { rows } = csvOf(csvText(chart.table));
      // As people are told them; hours of charging to a quarter.
      const cells = rows.flat().filter((cell) => cell !== "" && Number.isFinite(Number(cell)));
      const known = new Set(
        cells.flatMap((cell) => [threeFigures(Number(cell)), quarterHours(Number(cell)).replace(" h", "")]),
      );
      const pattern = /(?<![\d.])−?\d[\d\u202f]*(?:\.\d+|[¼½¾])?(?=[ \u00a0](?!kWh)\S)/g;
      const numbers = [...chart.alt.matchAll(pattern)].map(([number]) => number);
      const unknown = numbers.filter((number) => !known.has(number));
      expect(numbers.length - unknown.length, `${name}: ${chart.alt}`).toBeGreaterThan(0);
      told += numbers.length;
      missing += unknown.length;
    }
    // Few are in no cell, being worked from several: a power, a limit, how much a pack falls short.
    expect(missing / told).toBeLessThan(0.15);
  });

  it("are read from the same beginning to the same end along time, and along distance", () => {
    for (const [quantity, least] of [
      ["time_s", 3],
      ["distance_m", 1],
    ] as const) {
      const along = figures.flatMap(([, { chart }]) => (chart.position?.quantity === quantity ? [chart.position] : []));
      expect(along.length).toBeGreaterThanOrEqual(least);
      for (const { first, last } of along) expect([first, last]).toEqual([along[0]?.first, along[0]?.last]);
    }
  });

  it("hold in the workshop's own charts what the simulation has, sample by sample", () => {
    const expected = [
      (c: Channels, i: number) => [(c.time_s[i] as number) / S_PER_MIN, c.battery_A[i] as number],
      (c: Channels, i: number) => [
        (c.distance_m[i] as number) / M_PER_KM,
        ((c.motorTorque_Nm[i] as number) * (c.motorSpeed_radps[i] as number)) / W_PER_KW,
      ],
    ];
    // A quotient and a product by the inverse part in the last digits.
    const nine = (value: unknown) => Number(value).toPrecision(9);
    for (const [k, point] of expected.entries()) {
      const { rows } = figures.find(([name]) => name === `ownCharts ${k}`)?.[1].chart.table ?? { rows: [] };
      for (const { name, channels } of values.runs.candidates) {
        if (!channels) throw new Error("driven without channels");
        const all = new Set(Array.from({ length: channels.length }, (_, i) => point(channels, i).map(nine).join(" ")));
        const drawn = rows.filter(([pack]) => pack === name).map(([, x, y]) => `${nine(x)} ${nine(y)}`);
        expect(drawn.length).toBeGreaterThan(100);
        expect(drawn.filter((each) => !all.has(each))).toEqual([]);
      }
    }
  });
});
