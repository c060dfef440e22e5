import * as z from "zod";
import { nearest } from "../nearest.ts";
import { InputError, inputError, type Problem } from "../problems.ts";
import { JOB_FORMAT, JOB_VERSION, Job } from "./job.ts";
import { Road } from "./road.ts";
import { unitWords } from "./unitWords.ts";

const listedFaults = 100; // a wrong list makes as many faults as it has entries; the rest is counted

/**
 * The job in a file's text. Throws InputError with every fault: not JSON, not a job, a newer version, or each wrong
 * value with its path, what was found and what is allowed. `where` names the file.
 */
export function readJobText(text: string, where: string): Job {
  const tidy = text.replace(/^\uFEFF/, "");
  let json: unknown;
  try {
    json = JSON.parse(tidy);
  } catch (error) {
    throw notJson(tidy, where, error);
  }
  return readJob(json, where);
}

/** A saved job with a slip in it gets the line of the slip, where the engine says it; anything else is told what it is not. */
function notJson(text: string, where: string, error: unknown): InputError {
  if (text.trim() === "") return inputError("notJson", where, "found nothing in it, a saved job file wanted");
  const line = /^\s*\{/.test(text) ? lineOf(text, error) : undefined;
  if (line !== undefined) {
    const wanted = "look for a comma, quote or bracket too many or too few";
    return inputError("notJson", `${where} line ${line}`, `found a slip in the JSON here or just before it, ${wanted}`);
  }
  const start = text.slice(0, 12).replace(/[^\x20-\x7e]/g, "·");
  return inputError("notJson", where, `found text that is not JSON (it begins "${start}"), a saved job file wanted`);
}

/** Engines word it differently; each names a place (`at position 17`, `at line 2 column 3`) unless the text just ends. */
function lineOf(text: string, error: unknown): number | undefined {
  const said = error instanceof SyntaxError ? error.message : "";
  const position = /position (\d+)/.exec(said)?.[1];
  if (position !== undefined) return text.slice(0, Number(position)).split("\n").length;
  const line = /line (\d+)/.exec(said)?.[1];
  if (line !== undefined) return Number(line);
  return /end of (JSON|data|input)|EOF/i.test(said) ? text.trimEnd().split("\n").length : undefined;
}

/** The job in a parsed document; see `readJobText`. */
export function readJob(json: unknown, where = "document"): Job {
  if (typeof json !== "object" || json === null || Array.isArray(json)) {
    throw inputError("notAJob", where, `found ${describe(json)}, a job document wanted`);
  }
  const { format, version } = json as { format?: unknown; version?: unknown };
  if (format !== JOB_FORMAT) {
    throw inputError("notAJob", where, `found ${describe(format)} as its format, "${JOB_FORMAT}" wanted`);
  }
  if (typeof version === "number" && Number.isInteger(version) && version > JOB_VERSION) {
    throw inputError(
      "newerVersion",
      where,
      `found version ${version}, this program reads up to version ${JOB_VERSION}: open it with a newer program`,
    );
  }
  return held(Job, json, where);
}

/** A road by itself, as it stands in a job; for who makes one and wants it held to the same bounds. */
export function readRoad(json: unknown, where = "road"): Road {
  return held(Road, json, where);
}

function held<Schema extends z.ZodType>(schema: Schema, json: unknown, where: string): z.output<Schema> {
  const result = parsed(schema, json, where);
  if (result.success) return result.data;
  const problems = result.error.issues.flatMap((issue) => toProblems(issue, json, schema));
  if (problems.length <= listedFaults) throw new InputError(problems);
  const message = `found ${problems.length - listedFaults} more faults of these kinds`;
  throw new InputError([...problems.slice(0, listedFaults), { code: "moreFaults", where, message }]);
}

/** The schema library hands on faults as arguments of a call, of which there can be some hundred thousand at most. */
function parsed<Schema extends z.ZodType>(schema: Schema, json: unknown, where: string) {
  try {
    return schema.safeParse(json);
  } catch (error) {
    if (error instanceof RangeError) throw inputError("moreFaults", where, "found more faults than can be listed");
    throw error;
  }
}

/**
 * One or more problems of ours for one issue of the schema library's. `schema` is what `json` was held to: it knows both bounds of
 * a number, of which the issue names one, and the keys that a misspelt one may have meant.
 */
export function toProblems(issue: z.core.$ZodIssue, json: unknown, schema: unknown = Job): Problem[] {
  const where = issue.path.length > 0 ? issue.path.map(String).join(".") : "document";
  const found = valueAt(json, issue.path);
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => {
        const known = keysAt(schema, issue.path);
        // Of two as near, the one that is missing; the first wins.
        const missing = known.filter((one) => !Object.hasOwn(Object(found), one));
        const meant = nearest(key, [...missing, ...known]);
        const hint = meant ? `, perhaps ${meant} is meant` : "";
        return {
          code: "unknownKey",
          where: issue.path.length > 0 ? `${where}.${key}` : key,
          message: `found a key this program does not know${hint}`,
        };
      });
    case "too_small":
    case "too_big":
      return [{ code: "outOfRange", where, message: outOfRange(issue, found, schema) }];
    case "invalid_type":
      return [{ code: "wrongType", where, message: `found ${describe(found)}, ${typeName(issue, schema)} wanted` }];
    case "invalid_value":
      return [{ code: "notAllowed", where, message: `found ${describe(found)}, ${oneOf(issue.values)} wanted` }];
    case "invalid_union":
      return [{ code: "notAllowed", where, message: `found ${describe(found)}, ${unionChoices(issue)} wanted` }];
    case "custom":
      return [{ code: "contradicts", where, message: issue.message }];
    default:
      return [{ code: "wrong", where, message: `found ${describe(found)}: ${issue.message.toLowerCase()}` }];
  }
}

function outOfRange(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, found: unknown, schema: unknown): string {
  const bound = issue.code === "too_small" ? issue.minimum : issue.maximum;
  const side = issue.code === "too_small" ? "at least" : "at most";
  if (issue.origin === "array") {
    const length = Array.isArray(found) ? found.length : 0;
    return `found ${length} ${length === 1 ? "entry" : "entries"}, ${side} ${bound} wanted`;
  }
  if (issue.origin === "string") {
    const length = typeof found === "string" ? found.trim().length : 0;
    return length === 0
      ? "found an empty text, at least one letter wanted"
      : `found ${length} letters, ${side} ${bound} wanted`;
  }
  const unit = unitWords(issue.path);
  return `found ${describe(found)}${unit}, ${boundsAt(schema, issue.path) ?? `${side} ${bound}${unit}`} allowed`;
}

/** Both bounds of the number that the schema has at a path, with the unit; nothing where it is no number with two bounds. */
function boundsAt(schema: unknown, path: readonly PropertyKey[]): string | undefined {
  const number = shapesAt(schema, path)
    .map(unwrap)
    .find((shape) => shape instanceof z.ZodNumber);
  if (number === undefined || number.minValue === null || number.maxValue === null) return undefined;
  const unit = unitWords(path);
  const isOpen = number.def.checks?.some(
    (check) => check._zod.def.check === "greater_than" && "inclusive" in check._zod.def && !check._zod.def.inclusive,
  );
  return isOpen
    ? `above ${number.minValue} and at most ${number.maxValue}${unit}`
    : `${number.minValue} to ${number.maxValue}${unit}`;
}

function oneOf(values: readonly unknown[]): string {
  const words = values.map(describe);
  return words.length < 3 ? words.join(" or ") : `one of ${words.join(", ")}`;
}

function unionChoices(issue: z.core.$ZodIssueInvalidUnion): string {
  const options = "options" in issue && Array.isArray(issue.options) ? issue.options : [];
  return options.length > 0 ? oneOf(options) : "one of the known kinds";
}

function typeName({ expected, path }: z.core.$ZodIssueInvalidType, schema: unknown): string {
  const names: Record<string, string> = {
    int: "a whole number",
    string: "a text",
    boolean: "true or false",
    array: "a list",
    object: "a group of values",
    record: "a group of values",
  };
  if (expected !== "number") return names[expected] ?? expected;
  const bounds = boundsAt(schema, path);
  if (bounds === undefined) return "a number";
  return bounds.startsWith("above") ? `a number ${bounds}` : `a number from ${bounds}`;
}

/** A found value as a person can recognise it, kept short. */
function describe(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "an empty value";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a group of values";
  if (typeof value === "string") return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  return String(value);
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = json;
  for (const key of path) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** The keys the schema knows at a path, for suggesting what a misspelt one meant. */
function keysAt(schema: unknown, path: readonly PropertyKey[]): string[] {
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
  if (inner instanceof z.ZodArray) return [inner.element];
  if (inner instanceof z.ZodRecord) return [inner.valueType];
  if (inner instanceof z.ZodDiscriminatedUnion) return inner.options.flatMap((option) => children(option, key));
  return [];
}

/** A union's members; of anything else, itself. */
function members(shape: unknown): readonly unknown[] {
  const inner = unwrap(shape);
  return inner instanceof z.ZodDiscriminatedUnion ? inner.options : [inner];
}

/** The schema under optional, default and prefault wrappers; of a union, every member is tried by the caller. */
function unwrap(shape: unknown): unknown {
  let inner = shape;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodDefault || inner instanceof z.ZodPrefault)
    inner = inner.unwrap();
  return inner;
}
