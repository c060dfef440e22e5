import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { figureUnitsOf } from "../../../web/notebook/figureUnitsOf.ts";
import { sections } from "../../../web/sections/index.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** All that a section says of its result: sentences, tables, and of each figure its words, labels, readings and headings. */
function allWords(job: ReturnType<typeof demoJob>, units: UnitHabit): [string, string][] {
  const values = sectionValues(job, { units });
  const on = { ...drawing(640), units: figureUnitsOf(units) };
  return sections.map((section) => {
    const result = section.compute(values as never) as never;
    const worked = [...section.plot(result, on)].flatMap((each) => {
      if (!("chart" in each))
        return [each.caption, each.note ?? "", ...each.columns.map(({ title }) => title), ...each.rows.flat()];
      const { svg, alt, table, position, read } = each.chart;
      const readings = position
        ? [position.first, (position.first + position.last) / 2].flatMap((at) => {
            const { where, values: said } = read(at);
            return [where, ...said.map(({ text }) => text)];
          })
        : [];
      const drawn = [...svg.querySelectorAll("text")].map((text) => text.textContent ?? "");
      return [each.caption, alt, ...table.columns.map(({ label }) => label), ...readings, ...drawn];
    });
    const said = [section.sentence(result), ...(section.attention?.(result) ?? []), section.inShort?.(result) ?? ""];
    return [section.name, [...said, ...worked].join("\n").replaceAll("\u00a0", " ")];
  });
}

/** Units that each reader has another one for; what comes before is a number or the bracket of an axis. */
const foreign: Readonly<Record<UnitHabit, RegExp>> = {
  metric: /[\d(] ?(mph|miles?|Wh\/mile|lb|cwt|lb ft|bhp|hp|ft|psi|lbf|°F)(?![\w/])/g,
  british: /[\d(] ?(km\/h|km|Wh\/km|kg|Nm|m|mm)(?![\w/])/g,
  american: /[\d(] ?(km\/h|km|Wh\/km|kg|Nm|m|mm|N|°C|degC)(?![\w/])/g,
};

const habits: readonly UnitHabit[] = ["metric", "british", "american"];
const cases = demos.flatMap((_, which) => habits.map((units) => [demoJob(which).title, units, which] as const));

describe.each(cases)("%s in %s units", (_title, units, which) => {
  it.each(allWords(demoJob(which), units))("%s speaks in no other units", (_, words) => {
    expect(words.match(foreign[units]) ?? []).toEqual([]);
  });
});

it("steady speeds are round numbers in every reader's own unit", () => {
  for (const units of habits) {
    const words = new Map(allWords(demoJob(), units)).get("roadLoad") ?? "";
    const speeds = words.match(/^\d[\d.]* (mph|km\/h)$/gm) ?? [];
    expect(speeds.length).toBeGreaterThanOrEqual(8);
    for (const speed of speeds) expect(speed).toMatch(/^\d*[05] /);
  }
});
