/** The keys of a path such as `packs.0.name`. */
export function keysOf(path: string): string[] {
  return path === "" ? [] : path.split(".");
}

/** The value at a path, or at its keys, in a document; undefined where it leads nowhere. */
export function atPath(document: unknown, path: string | readonly PropertyKey[]): unknown {
  let value = document;
  for (const key of typeof path === "string" ? keysOf(path) : path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}

/**
 * A document that has `value` at the path and shares everything else with the one it came from; undefined removes the
 * key. Groups missing on the way are made.
 */
export function withPath<T>(document: T, path: string, value: unknown): T {
  return replace(document, keysOf(path), value) as T;
}

function replace(at: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (Array.isArray(at)) {
    const copy: unknown[] = [...at];
    copy[Number(key)] = replace(at[Number(key)], rest, value);
    return copy;
  }
  const group = typeof at === "object" && at !== null ? (at as Readonly<Record<string, unknown>>) : {};
  const next = replace(group[key], rest, value);
  if (next !== undefined) return { ...group, [key]: next };
  const { [key]: _removed, ...others } = group;
  return others;
}

/** Every number in a value, with its path. */
export function numbersIn(value: unknown, path = ""): { path: string; value: number }[] {
  if (typeof value === "number") return [{ path, value }];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, path === "" ? key : `${path}.${key}`));
}

/** Whether a path is another one or lies below it. */
export function isAtOrBelow(path: string, above: string): boolean {
  return path === above || path.startsWith(`${above}.`);
}
