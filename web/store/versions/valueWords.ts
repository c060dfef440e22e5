const LONGEST = 60;

/** A value of a job document in a few words, for a table of differences. */
export function valueWords(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "empty";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") {
    if (value === "") return "empty";
    return value.length > LONGEST ? `${value.slice(0, LONGEST - 1)}…` : value;
  }
  if (Array.isArray(value)) {
    const isShort = value.length <= 6 && value.every((each) => typeof each === "number" || typeof each === "string");
    return isShort && value.length > 0
      ? value.join(", ")
      : `${value.length} ${value.length === 1 ? "entry" : "entries"}`;
  }
  if (typeof value === "object") {
    const { name, title } = value as { readonly name?: unknown; readonly title?: unknown };
    const label = [name, title].find((each) => typeof each === "string");
    return typeof label === "string" ? label : `${Object.keys(value).length} values`;
  }
  return String(value);
}
