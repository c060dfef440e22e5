/** `npm run meter`: how far off each quantity is from its outside figures. The gate asserts the same comparisons. */
import { mean, median, quantile } from "simple-statistics";
import { type Comparison, errorOf } from "../support/comparison.ts";
import { topics } from "./against/topics.ts";

function row(comparison: Comparison): readonly string[] {
  const errors = comparison.pairs().map((pair) => errorOf(comparison, pair));
  const { quantity, as, unit, tolerance } = comparison;
  const shown = (error: number) => error.toExponential(1);
  return [
    quantity,
    String(errors.length),
    shown(mean(errors)),
    shown(median(errors)),
    shown(quantile(errors, 0.9)),
    shown(Math.max(...errors)),
    shown(tolerance),
    as === "ratio" ? "of it" : unit,
  ];
}

const head = ["quantity", "n", "mean", "median", "p90", "worst", "allowed", "in"];
const sections = Object.entries(topics).map(([topic, comparisons]) => ({ topic, rows: comparisons.map(row) }));
const all = [head, ...sections.flatMap(({ rows }) => rows)];
const widths = head.map((_, column) => Math.max(...all.map((cells) => (cells[column] ?? "").length)));
const line = (cells: readonly string[]) =>
  cells
    .map((cell, column) =>
      column === 0 || column === head.length - 1 ? cell.padEnd(widths[column]) : cell.padStart(widths[column]),
    )
    .join("  ")
    .trimEnd();

console.log(line(head));
for (const { topic, rows } of sections) {
  console.log(`\n${topic}`);
  for (const cells of rows) console.log(line(cells));
}
