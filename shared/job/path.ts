/** The value at a path such as `packs.0.name` in a document; undefined where the path leads nowhere. */
export function atPath(document: unknown, path: string): unknown {
  let value = document;
  for (const key of path.split(".")) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  return value;
}

/**
 * A document that has `value` at the path and shares everything else with the one it came from; undefined removes the
 * key. Groups missing on the way are made.
 */
export function withPath<T>(document: T, path: string, value: unknown): T {
  return replace(document, path.split("."), value) as T;
}

function replace(at: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (Array.isArray(at)) {
    const copy = [...at];
    copy[Number(key)] = replace(at[Number(key)], rest, value);
    return copy;
  }
  const group = typeof at === "object" && at !== null ? (at as Readonly<Record<string, unknown>>) : {};
  const next = replace(group[key], rest, value);
  if (next !== undefined) return { ...group, [key]: next };
  const { [key]: _removed, ...others } = group;
  return others;
}
