import { visibleLine } from "./visible.ts";

const width = 80; // what every terminal has, and as much as reads well on a wide one

/**
 * A sentence in lines of at most 80 letters, broken between words but not between a number and its unit; the first line begins with
 * `lead`, the others below its end.
 */
export function wrapText(text: string, lead = ""): string {
  const indent = " ".repeat(lead.length);
  const lines: string[] = [];
  let line = lead;
  let isBegun = false;
  for (const word of visibleLine(text).split(/(?<!\d) | (?![A-Za-z%])/)) {
    if (isBegun && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line += isBegun ? ` ${word}` : word;
    isBegun = true;
  }
  return [...lines, line].join("\n");
}
