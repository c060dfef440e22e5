/** A found value as a person can recognise it, kept short. */
export function describeFound(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "an empty value";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a group of values";
  if (typeof value === "string") return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  return String(value);
}
