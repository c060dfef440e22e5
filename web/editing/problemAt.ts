import type { Problem } from "../../shared/problems.ts";
import { knownField, labelOf } from "./fieldTable/fieldAt.ts";

/**
 * The sentence to show at a field: its own problems first, otherwise what its value broke elsewhere, with the place.
 * Fields are called by their labels, not by their keys in the file.
 */
export function problemAt(path: string, problems: readonly Problem[]): string {
  const own = problems.filter(({ where }) => where === path || where.startsWith(`${path}.`));
  if (own.length > 0) return own.map(inWords).join("; ");
  return problems.map((problem) => `${named(problem.where)}${inWords(problem)}`).join("; ");
}

/** The place of a problem before its sentence, where it is a field; a group has no label, and its sentence says what it is about. */
function named(where: string): string {
  return knownField(where) ? `${labelOf(where)}: ` : "";
}

/** The message with the keys of neighbouring fields written as their labels. */
function inWords({ where, message }: Problem): string {
  const group = where.split(".").slice(0, -1);
  return message.replace(/\b[A-Za-z]+_[A-Za-z0-9]+\b/g, (key) => {
    const field = knownField([...group, key].join("."));
    return field ? `“${field.label}”` : key;
  });
}
