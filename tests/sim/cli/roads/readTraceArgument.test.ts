import { describe, expect, it } from "vitest";
import { writeGpx } from "../../../logs/logWriter.ts";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { quick } from "../commands/drivenTuner.ts";
import { logFiles, rows, table } from "../commands/loggedWeek.ts";

describe("drive over a log", () => {
  it("says that it was cleaned and how good it is", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const { code, err } = await runCommand("drive", quick(), "--trace", path);
    expect(code).toBe(0);
    expect(err).toMatch(/^monday\.gpx: a log of 2 trips, 1[12](\.\d)? km, cleaned; (good|usable): /);
  });

  it("sends what the log leaves open to the command that takes the answer", async () => {
    const [path] = logFiles({ "r.csv": table("time,speed", (s) => `${s},20`) });
    const { code, err } = await runCommand("drive", changedDemoFile(), "--trace", path);
    expect(code).toBe(2);
    expect(err).toMatch(/--speed-unit .*; trace takes the answer, and writes a road to drive with --out$/);
  });
});
