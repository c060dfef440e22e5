import * as z from "zod";
import { nearest } from "../nearest.ts";
import { InputError, inputError, type Problem } from "../problems.ts";
import { JOB_FORMAT, JOB_VERSION, Job } from "./job.ts";

/**
 * The job in a file's text. Throws InputError with every fault: not JSON, not a job, a newer version, or each wrong
 * value with its path, what was found and what is allowed. `where` names the file.
 */
export function readJobText(text: string, where: string): Job {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    const start = text.slice(0, 12).replace(/[^\x20-\x7e]/g, "·");
    throw inputError("notJson", where, `found text that is not JSON (it begins "${start}"), a saved job file wanted`);
  }
  return readJob(json, where);
}

/** The job in a parsed document; see `readJobText`. */
export function readJob(json: unknown, where = "document"): Job {
  if (typeof json !== "object" || json === null || Array.isArray(json)) {
    throw inputError("notAJob", where, `found ${describe(json)}, a job document wanted`);
  }
  const { format, version } = json as { format?: unknown; version?: unknown };
  if (format !== JOB_FORMAT) {
    throw inputError("notAJob", where, `found format ${describe(format)}, "${JOB_FORMAT}" wanted`);
  }
  if (typeof version === "number" && Number.isInteger(version) && version > JOB_VERSION) {
    throw inputError(
      "newerVersion",
      where,
      `found version ${version}, this program reads up to version ${JOB_VERSION}: open it with a newer program`,
    );
  }
  const result = Job.safeParse(json);
  if (result.success) return result.data;
  throw new InputError(result.error.issues.flatMap((issue) => toProblems(issue, json)));
}

/** One or more problems of ours for one issue of the schema library's. */
export function toProblems(issue: z.core.$ZodIssue, json: unknown): Problem[] {
  const where = issue.path.length > 0 ? issue.path.map(String).join(".") : "document";
  const found = valueAt(json, issue.path);
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => {
        const known = keysAt(issue.path);
        const meant = nearest(key, known);
        const hint = meant ? `, perhaps ${meant} is meant` : "";
        return {
          code: "unknownKey",
          where: issue.path.length > 0 ? `${where}.${key}` : key,
          message: `found a key this program does not know${hint}`,
        };
      });
    case "too_small":
    case "too_big":
      return [{ code: "outOfRange", where, message: `found ${size(found, issue.origin)}, ${allowed(issue)} allowed` }];
    case "invalid_type":
      return [{ code: "wrongType", where, message: `found ${describe(found)}, ${typeName(issue.expected)} wanted` }];
    case "invalid_value":
      return [
        {
          code: "notAllowed",
          where,
          message: `found ${describe(found)}, ${issue.values.map(describe).join(" or ")} allowed`,
        },
      ];
    case "invalid_union":
      return [{ code: "notAllowed", where, message: `found ${describe(found)}, ${unionChoices(issue)} wanted` }];
    case "custom":
      return [{ code: "contradicts", where, message: issue.message }];
    default:
      return [{ code: "wrong", where, message: `found ${describe(found)}: ${issue.message.toLowerCase()}` }];
  }
}

function allowed(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
  const what = issue.origin === "array" ? " entries" : issue.origin === "string" ? " letters" : "";
  if (issue.code === "too_small") return `${issue.inclusive ? "at least" : "more than"} ${issue.minimum}${what}`;
  return `${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}${what}`;
}

function size(found: unknown, origin: string): string {
  if (origin === "array" && Array.isArray(found)) return `${found.length} entries`;
  if (origin === "string" && typeof found === "string") return `${found.length} letters`;
  return describe(found);
}

function unionChoices(issue: z.core.$ZodIssueInvalidUnion): string {
  const options = (issue as { options?: readonly unknown[] }).options;
  return options ? `one of ${options.map(describe).join(", ")}` : "one of the known kinds";
}

function typeName(expected: string): string {
  const names: Record<string, string> = {
    int: "a whole number",
    number: "a number",
    string: "a text",
    boolean: "true or false",
  };
  return names[expected] ?? (expected === "array" ? "a list" : expected === "object" ? "a group of values" : expected);
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
function keysAt(path: readonly PropertyKey[]): string[] {
  let shapes: unknown[] = [Job];
  for (const key of path) shapes = shapes.flatMap((shape) => children(shape, key));
  return shapes
    .flatMap(members)
    .flatMap((shape) =>
      unwrap(shape) instanceof z.ZodObject ? Object.keys((unwrap(shape) as z.ZodObject).shape) : [],
    );
}

function children(shape: unknown, key: PropertyKey): unknown[] {
  const inner = unwrap(shape);
  if (inner instanceof z.ZodObject) return [inner.shape[String(key)]].filter(Boolean);
  if (inner instanceof z.ZodArray) return [inner.element];
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
