import { expect, it } from "vitest";
import { message, messageIn } from "../../../shared/quantity/message.ts";
import { settingsSheet } from "../../../sim/index.ts";
import settings from "../../../web/sections/settings.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();
const values = sectionValues(job);
const { chargePlan, currentsPlan } = values;

type Stop = NonNullable<(typeof values.answer.packs)[number]["stop"]>;

/** The working for a pack, the answer having this against it or nothing. */
function told(packIndex: number, stop?: Stop) {
  const packs = job.packs.map((_, i) => (i === packIndex && stop ? { stop } : {}));
  const answer = { packs } as unknown as typeof values.answer;
  const result = settings.compute({ job, currentsPlan, chargePlan, answer, packIndex, units: "metric" });
  return { result, tables: [...settings.plot(result, drawing())].flatMap((each) => ("rows" in each ? [each] : [])) };
}

it("has a row for every setting of the sheet that is printed, and the cautions once", () => {
  const { result, tables } = told(1);
  const { groups } = settingsSheet(job, 1, currentsPlan, chargePlan);
  expect(tables.map(({ rows }) => rows.length)).toEqual(groups.map((group) => group.settings.length));
  const rows = tables.flatMap((table) => table.rows);
  expect(result.count).toBe(rows.length);
  expect(tables.filter(({ note }) => note !== undefined)).toHaveLength(1);
  expect(new Set(rows.map(({ length }) => length))).toEqual(new Set([4]));
});

it("counts what only a maker's sheet says, as the rows say it", () => {
  const { result, tables } = told(1);
  const missing = tables.flatMap(({ rows }) => rows).filter(([, , from]) => from.startsWith("not in the job")).length;
  expect(missing).toBeGreaterThan(0);
  expect(settings.sentence(result)).toMatch(
    new RegExp(`^${result.count} values with 13 kWh, ${missing} of them are only in the makers’ sheets\\.`),
  );
  expect(settings.sentence({ ...result, bySheet: 0 })).toMatch(/, all of them are known here\./);
  expect(settings.attention?.(result)).toEqual([]);
});

it("sets nothing with a pack that may not be used, and says why", () => {
  const sentence = message`It is above what the controller bears.`;
  const { result } = told(0, { sentence } as Stop);
  const why = messageIn(sentence, "metric");
  expect(settings.sentence(result)).toBe(`Nothing is to be set with 8 kWh: ${why}`);
  expect(settings.summary?.(result)).toBe("8 kWh may not be used");
  expect(settings.attention?.(result)).toEqual([`8 kWh: ${why}`]);
});

it("tells of the last pack where the one in view is gone", () => {
  expect(told(job.packs.length + 3).result.pack).toBe(job.packs.at(-1)?.name);
});
