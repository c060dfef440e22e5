import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { quantile } from "d3-array";
import { textTable } from "../../sim/cli/printing/table.ts";
import type { MeterNote } from "./noteForMeter.ts";
import { runTool } from "./runTool.ts";

// `npm run meter`: runs the reference tests and prints how far each quantity lies from the figures from outside, whether it
// passed or not. Look at it before touching a tolerance.

const folder = mkdtempSync(join(tmpdir(), "bellhousing-meter-"));
process.env["METER_FOLDER"] = folder;
const { code, said } = await runTool("node_modules/vitest/vitest.mjs", ["run", "--project", "reference"]);

const errors = new Map<string, MeterNote[]>();
for (const file of readdirSync(folder)) {
  for (const line of readFileSync(join(folder, file), "utf8").trim().split("\n")) {
    const note: MeterNote = JSON.parse(line);
    errors.set(note.quantity, [...(errors.get(note.quantity) ?? []), note]);
  }
}
rmSync(folder, { recursive: true, force: true });

const figure = (value: number | undefined) => (value === undefined ? "" : value === 0 ? "0" : value.toExponential(1));
const rows = [...errors].sort().map(([quantity, notes]) => {
  const sorted = notes.map(({ error }) => error).sort((a, b) => a - b);
  const mean = sorted.reduce((sum, error) => sum + error, 0) / sorted.length;
  const spent = Math.max(...notes.map(({ error, tolerance }) => (error === 0 ? 0 : error / tolerance)));
  return [
    quantity,
    String(sorted.length),
    figure(mean),
    figure(quantile(sorted, 0.5)),
    figure(quantile(sorted, 0.9)),
    figure(sorted.at(-1)),
    `${Math.round(100 * spent)} %`,
  ];
});
const headings = ["compared", "mean error", "median", "90 of 100", "worst", "of its tolerance"];
console.log(textTable([{ heading: "quantity" }, ...headings.map((heading) => ({ heading, isNumber: true }))], rows));
console.log(said.trimEnd().split("\n").at(-1));
process.exitCode = code ?? 1;
