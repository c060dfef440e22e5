import type { Problem } from "../../shared/problems.ts";

/** The sentence to show at a field: its own problems first, otherwise what its value broke elsewhere, with the place. */
export function problemAt(path: string, problems: readonly Problem[]): string {
  const own = problems.filter(({ where }) => where === path || where.startsWith(`${path}.`));
  if (own.length > 0) return own.map(({ message }) => message).join("; ");
  return problems.map(({ where, message }) => `${where}: ${message}`).join("; ");
}
