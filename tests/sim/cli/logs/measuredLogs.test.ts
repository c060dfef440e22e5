import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { measuredLogs } from "../../../../sim/cli/logs/measuredLogs.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";

const rows = (row: (i: number) => string) => Array.from({ length: 60 }, (_, i) => `${i},${row(i)}`).join("\n");
const drive = `time_s,speed_kmh\n${rows((i) => `${Math.min(50, 5 * i)}`)}\n`;
const pack = `time_s,Pack voltage (V),Pack current (A)\n${rows((i) => `108,${10 + i}`)}\n`;

function read(files: Readonly<Record<string, string>>) {
  const folder = emptyFolder();
  const paths = Object.entries(files).map(([name, text]) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  });
  return measuredLogs(paths, {}, (_words, _isLong, work) => work(() => {}));
}

it("reads motion and pack, the motion cleaned", () => {
  const { logs, drive: driven } = read({ "drive.csv": drive, "pack.csv": pack });
  expect(logs.pack.file).toBe("pack.csv");
  expect(driven?.parts).toHaveLength(1);
  expect(driven?.clock.isDated).toBe(false);
});

it("has no drive where only the pack was logged", () => {
  expect(read({ "pack.csv": pack })).not.toHaveProperty("drive");
});

it("says the faults of all files together", () => {
  expect(() => read({ "a.csv": "nothing", "b.csv": "" })).toThrow(/a\.csv[\s\S]*b\.csv/);
});
