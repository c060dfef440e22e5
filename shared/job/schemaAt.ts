import * as z from "zod";
import { unitWords } from "./unitWords.ts";

/** Both bounds of the number that the schema has at a path, with the unit; nothing where it is no number with two bounds. */
export function boundsAt(schema: unknown, path: readonly PropertyKey[]): string | undefined {
  const number = shapesAt(schema, path)
    .map(unwrap)
    .find((shape) => shape instanceof z.ZodNumber);
  if (number === undefined) return undefined;
  if (!Number.isFinite(number.minValue) || !Number.isFinite(number.maxValue)) return undefined;
  const unit = unitWords(path);
  const isOpen = number.def.checks?.some(
    (check) => check._zod.def.check === "greater_than" && "inclusive" in check._zod.def && !check._zod.def.inclusive,
  );
  return isOpen
    ? `above ${number.minValue} and at most ${number.maxValue}${unit}`
    : `${number.minValue} to ${number.maxValue}${unit}`;
}

/** Whether the schema has anything at a path, whatever the kinds that a document has chosen on the way. */
export function isInSchema(schema: unknown, path: readonly PropertyKey[]): boolean {
  return shapesAt(schema, path).length > 0;
}

/** The keys the schema knows at a path, for suggesting what a misspelt one meant. */
export function keysAt(schema: unknown, path: readonly PropertyKey[]): string[] {
  return shapesAt(schema, path)
    .flatMap(members)
    .map(unwrap)
    .flatMap((shape) => (shape instanceof z.ZodObject ? Object.keys(shape.shape) : []));
}

/** What the schema has at a path: several shapes below a union, whose members may share a key. */
function shapesAt(schema: unknown, path: readonly PropertyKey[]): unknown[] {
  let shapes: unknown[] = [schema];
  for (const key of path) shapes = shapes.flatMap((shape) => children(shape, key));
  return shapes;
}

function children(shape: unknown, key: PropertyKey): unknown[] {
  const inner = unwrap(shape);
  if (inner instanceof z.ZodObject) return [inner.shape[String(key)]].filter(Boolean);
  if (inner instanceof z.ZodArray) return /^\d+$/.test(String(key)) ? [inner.element] : [];
  if (inner instanceof z.ZodRecord) return [inner.valueType];
  if (inner instanceof z.ZodUnion) return inner.options.flatMap((option) => children(option, key));
  return [];
}

/** A union's members; of anything else, itself. */
function members(shape: unknown): readonly unknown[] {
  const inner = unwrap(shape);
  return inner instanceof z.ZodUnion ? inner.options : [inner];
}

/** The schema under optional, default and prefault wrappers; of a union, every member is tried by the caller. */
export function unwrap(shape: unknown): unknown {
  let inner = shape;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodDefault || inner instanceof z.ZodPrefault)
    inner = inner.unwrap();
  return inner;
}
