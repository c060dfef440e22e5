/**
 * A document as text that is the same for the same document: keys in the order of their UTF-16 units, no space, numbers as the
 * language writes them [RFC8785, 3.2]. What is undefined is not there.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((each) => canonicalJson(each ?? null)).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const entries = Object.entries(value).filter(([, each]) => each !== undefined);
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, each]) => `${JSON.stringify(key)}:${canonicalJson(each)}`).join(",")}}`;
}
