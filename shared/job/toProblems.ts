import type * as z from "zod";
import { nearest } from "../nearest.ts";
import type { Problem } from "../problems.ts";
import { describeFound } from "./describeFound.ts";
import { Job } from "./job.ts";
import { atPath } from "./path.ts";
import { boundsAt, keysAt } from "./schemaAt.ts";
import { unitWords } from "./unitWords.ts";

/**
 * One or more problems of ours for one issue of the schema library's. `schema` is what `json` was held to: it knows both bounds of
 * a number, of which the issue names one, and the keys that a misspelt one may have meant.
 */
export function toProblems(issue: z.core.$ZodIssue, json: unknown, schema: unknown = Job): Problem[] {
  const where = issue.path.length > 0 ? issue.path.map(String).join(".") : "document";
  const found = atPath(json, issue.path);
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
      return [
        { code: "wrongType", where, message: `found ${describeFound(found)}, ${typeName(issue, schema)} wanted` },
      ];
    case "invalid_value":
      return [{ code: "notAllowed", where, message: `found ${describeFound(found)}, ${oneOf(issue.values)} wanted` }];
    case "invalid_union":
      return [{ code: "notAllowed", where, message: `found ${describeFound(found)}, ${unionChoices(issue)} wanted` }];
    case "custom":
      return [{ code: "contradicts", where, message: issue.message }];
    default:
      return [{ code: "wrong", where, message: `found ${describeFound(found)}: ${issue.message.toLowerCase()}` }];
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
  return `found ${describeFound(found)}${unit}, ${boundsAt(schema, issue.path) ?? `${side} ${bound}${unit}`} allowed`;
}

function oneOf(values: readonly unknown[]): string {
  const words = values.map(describeFound);
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
