import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import type { Job } from "../../../shared/job/job.ts";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { openExplanations } from "../../../sim/index.ts";
import { figureUnitsOf } from "../../../web/notebook/figures/figureUnitsOf.ts";
import { reasonFacts } from "../../../web/notebook/reasons/reasonFacts.ts";
import { reasonLines } from "../../../web/notebook/reasons/reasonLines.ts";
import { sections } from "../../../web/sections/index.ts";
import type { Table } from "../../../web/sections/parts/section.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const { explanations, workedReason } = await openExplanations();

/** Charts of the workshop's own that show what no other figure does. */
const charts: Values["charts"] = [
  { x: "time", y: "packTemperature", packs: [], caption: "" },
  { x: "speed", y: "wheelForce", colour: "elevation", packs: [], caption: "" },
  { x: "distance", y: "motorPower", packs: [], caption: "" },
];

/** All that a section says: its words, findings, tables, reasons, and of each figure its words, labels, readings and headings. */
function allWords(job: Job, units: UnitHabit): [string, string[]][] {
  const values = sectionValues(job, { units, charts });
  const on = { ...drawing(640), units: figureUnitsOf(units) };
  const facts = reasonFacts((name) => values[name], values.answerIndex);
  if (!facts) throw new Error("nothing is known to explain");
  return sections.map((section) => {
    const result = section.compute(values as never) as never;
    const worked = [...section.plot(result, on)].flatMap((each) => {
      if (!("chart" in each))
        return [each.caption, each.note ?? "", ...each.columns.map(({ title }) => title), ...each.rows.flat()];
      const { svg, alt, table, position, read } = each.chart;
      const readings = position
        ? [0, 0.37, 0.5, 1].flatMap((share) => {
            const { where, values: said } = read(position.first + share * (position.last - position.first));
            return [where, ...said.map(({ text }) => text)];
          })
        : [];
      const drawn = [...svg.querySelectorAll("text")].map((text) => text.textContent ?? "");
      return [each.caption, alt, ...table.columns.map(({ label }) => label), ...readings, ...drawn];
    });
    const said = [section.sentence(result), ...(section.attention?.(result) ?? []), section.inShort?.(result) ?? ""];
    const reasons = (section.explains ?? []).flatMap((key) => {
      const { result: what, formula, inputs, source } = explanations[key];
      const lines = reasonLines(job, inputs, units, facts.packIndex).flatMap(({ label, value, from }) => [
        label,
        value ?? "",
        from,
      ]);
      const worked = workedReason(key, facts, units);
      return [what, inReadersUnits(formula, units), source, worked?.value ?? "", ...(worked?.lines ?? []), ...lines];
    });
    const words = [section.title, section.question, section.caution ?? "", ...said, ...worked, ...reasons];
    return [section.name, words.map((each) => each.replaceAll("\u00a0", " "))];
  });
}

/** Digits that say something, of every number in a text; the number of a standard is its name. */
function figuresOf(text: string): [string, number][] {
  const unnamed = text.replace(/\b(IEC|ISO|UN R) ?\d[\d-]*/g, "$1");
  return [...unnamed.matchAll(/\d[\d\u202f]*(?:\.\d+)?/g)].map(([number]) => {
    const digits = number.replace(/\u202f/g, "").replace(/^0+\.?0*/, "");
    return [text, (digits.includes(".") ? digits.replace(".", "") : digits.replace(/0+$/, "")).length];
  });
}

/** Units that each reader has another one for; what comes before is a number or the bracket of an axis. */
const foreign: Readonly<Record<UnitHabit, RegExp>> = {
  metric: /[\d(] ?(mph|miles?|Wh\/mile|lb|cwt|lb ft|bhp|hp|ft|psi|lbf|°F|N\/mph)(?![\w/])/g,
  british: /[\d(] ?(km\/h|km|Wh\/km|kg|Nm|m|mm|m²|N\/\(km\/h\)|cwt|lbf|°F)(?![\w/Ω²])/g,
  american: /[\d(] ?(km\/h|km|Wh\/km|kg|Nm|m|mm|m²|N|N\/\(km\/h\)|°C|degC|cwt|bhp)(?![\w/Ω²])/g,
};

const habits: readonly UnitHabit[] = ["metric", "british", "american"];
const cases = demos.flatMap((_, which) => habits.map((units) => [demoJob(which).title, units, which] as const));

describe.each(cases)("%s in %s units", (_title, units, which) => {
  const bySection = allWords(demoJob(which), units);

  it.each(bySection)("%s speaks in no other units", (_, words) => {
    expect(words.join("\n").match(foreign[units]) ?? []).toEqual([]);
    expect(words.join("\n")).not.toMatch(units === "metric" ? /\bmiles?\b|\bpounds?\b/i : /kilomet|kilogram/i);
  });

  it.each(bySection)("%s says numbers of three figures at most, and nothing that is no number", (_, words) => {
    expect(words.join("\n")).not.toMatch(/NaN|Infinity|\bundefined\b|\bnull\b|\[object/);
    // A mass as driven is a sum of weighed ones, and is told to the kilogram where it stands against a plate.
    const long = words
      .flatMap(figuresOf)
      .filter(([text, count]) => count > 3 && !/plate allows|^pack: |kerb weight - |^weight: /.test(text));
    expect(long).toEqual([]);
  });

  it("has no bare number in a table, but ratios and what the caption gives the unit of", () => {
    const tables = tablesOf(demoJob(which), units);
    expect(tables.length).toBeGreaterThanOrEqual(8);
    for (const { caption, columns, rows } of tables) {
      const bare = rows.flatMap((row) =>
        row.filter((cell, i) => /^[\d.]+$/.test(cell) && !/ratio/.test(columns[i].title) && !/\(rpm\)/.test(caption)),
      );
      expect([caption, ...bare.filter((cell) => !isRatioValue(rows, cell))]).toEqual([caption]);
    }
  });
});

/** A cell of the table of doubts whose row is a coefficient or a ratio, which have no unit. */
function isRatioValue(rows: readonly (readonly string[])[], cell: string): boolean {
  return rows.some((row) => row.includes(cell) && /coefficient|ratio|final drive|mass counted as|grip/i.test(row[0]));
}

it("are told that a unit is foreign by what they are tried with", () => {
  // The net itself: each reader's own words pass, the others' are caught.
  expect("38 km, 90 km/h, (kg)".match(foreign.british)).toHaveLength(3);
  expect("21 °C, 190 N".match(foreign.american)).toHaveLength(2);
  expect("24 miles (mph) 18.7 cwt".match(foreign.metric)).toHaveLength(3);
  expect("24 miles at 35 mph, 2090 lb, 20 °C, 9.6 mΩ".match(foreign.british)).toBeNull();
});

it("steady speeds are round numbers in every reader's own unit", () => {
  for (const units of habits) {
    const speeds = tablesOf(demoJob(), units)
      .find(({ caption }) => caption.startsWith("Steady speeds"))
      ?.rows.map(([speed]) => speed);
    expect(speeds?.length).toBe(8);
    for (const speed of speeds ?? []) expect(speed).toMatch(units === "metric" ? /^\d*0 km\/h$/ : /^\d*[05] mph$/);
  }
});

function tablesOf(job: Job, units: UnitHabit): Table[] {
  const values = sectionValues(job, { units });
  return sections.flatMap((section) => {
    const worked = [...section.plot(section.compute(values as never) as never, drawing(640))];
    return worked.flatMap((each) => ("rows" in each ? [each] : []));
  });
}
