import { expect, it } from "vitest";
import * as z from "zod";
import { Job } from "../../../../shared/job/job.ts";
import { unwrap } from "../../../../shared/job/schemaAt.ts";
import { fieldList } from "../../../../web/editing/fieldTable/fieldList.ts";

/** Paths of all single numbers that the schema has below a shape, `*` for a place in a list. Points of a curve are no single numbers. */
function numbersIn(shape: unknown, path: readonly string[] = []): string[] {
  const inner = unwrap(shape);
  if (inner instanceof z.ZodObject)
    return Object.entries(inner.shape).flatMap(([key, value]) => numbersIn(value, [...path, key]));
  if (inner instanceof z.ZodArray)
    return unwrap(inner.element) instanceof z.ZodNumber ? [] : numbersIn(inner.element, [...path, "*"]);
  if (inner instanceof z.ZodRecord) return numbersIn(inner.valueType, [...path, "*"]);
  if (inner instanceof z.ZodUnion) return inner.options.flatMap((option) => numbersIn(option, path));
  return inner instanceof z.ZodNumber ? [path.join(".")] : [];
}

/** What the page works out, keeps or has a control of its own for. */
const NOT_TYPED = [
  /^(pinned|predictions)\./, // a state that was kept
  /^roads\.\*\.spread\./, // from the log
  /^origins\.\*\.plusMinus_frac$/, // beside the field that it is of
];
/** Roads differ in it by a quarter of a per cent at most; a file may hold that of the place. */
const IN_THE_FILE_ALONE = ["environment.gravity_mps2"];

it("has a field for every number that a job may hold, but for what is kept, worked out or written in the file alone", () => {
  const typed = [...new Set(numbersIn(Job))].filter((path) => !NOT_TYPED.some((kept) => kept.test(path)));
  expect(typed.length).toBeGreaterThan(100);
  expect(typed.filter((path) => !(path in fieldList))).toEqual(IN_THE_FILE_ALONE);
});
