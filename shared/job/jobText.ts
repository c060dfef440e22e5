/** Longest line a list of plain values may make before it is broken, so that a file stays readable and small. */
const WIDTH = 110;

/**
 * A job document as the text of its file: JSON, two spaces a level, lists of plain values filled into lines (a recorded
 * road takes hundreds of lines, not tens of thousands), a line feed at the end. Reading it gives the same document.
 */
export function jobText(document: unknown): string {
  return `${write(document, "")}\n`;
}

function write(value: unknown, indent: string): string {
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return "[]";
    if (value.every((each) => typeof each !== "object" || each === null)) return fill(value, indent, inner);
    return `[\n${value.map((each) => inner + write(each, inner)).join(",\n")}\n${indent}]`;
  }
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const entries = Object.entries(value).filter(([, each]) => each !== undefined);
  if (entries.length === 0) return "{}";
  const lines = entries.map(([key, each]) => `${inner}${JSON.stringify(key)}: ${write(each, inner)}`);
  return `{\n${lines.join(",\n")}\n${indent}}`;
}

function fill(values: readonly unknown[], indent: string, inner: string): string {
  const lines: string[] = [];
  let line = "";
  for (const value of values) {
    const word = JSON.stringify(value) ?? "null";
    if (line !== "" && inner.length + line.length + word.length + 3 > WIDTH) {
      lines.push(line);
      line = "";
    }
    line += line === "" ? word : `, ${word}`;
  }
  lines.push(line);
  if (lines.length === 1) return `[${line}]`;
  return `[\n${lines.map((each) => inner + each).join(",\n")}\n${indent}]`;
}
