import { type Field, fieldList } from "./fieldList.ts";

/** The field that shows a path of the job; throws where the page has none. */
export function fieldAt(path: string): Field {
  const field = knownField(path);
  if (!field) throw new Error(`no field for ${path}`);
  return field;
}

/** The words by which people know a path: its field's label with its place in a list, or the path itself. */
export function labelOf(path: string): string {
  const field = knownField(path);
  if (!field) return path;
  const place = path.split(".").find((key) => /^\d+$/.test(key));
  return place === undefined ? field.label : `${field.label}, no. ${Number(place) + 1}`;
}

/** The field of a path, or nothing where the page has none. */
export function knownField(path: string): Field | undefined {
  return fieldList[path.replace(/\.\d+(?=\.|$)/g, ".*")];
}
