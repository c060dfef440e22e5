import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { bare, bareAt, found, logFiles, refused } from "../commands/loggedWeek.ts";

describe("a planned route", () => {
  // 199 steps of 0.0005 degrees to the north are 11.07 km.
  const route = bare(Array.from({ length: 200 }, (_, i) => bareAt(50 + i * 0.0005, 8.5)).join(""));

  it("is called so, and its speeds are asked for", async () => {
    const [path] = logFiles({ "plan.gpx": route });
    const message = await refused(path);
    expect(message).toContain("plan.gpx: found a planned route of 11.1 km without times, not a drive");
    expect(message).toContain("speeds for it are wanted: --speeds");
    const drive = await runCommand("drive", changedDemoFile(), "--trace", path);
    expect(drive).toMatchObject({ code: 2, err: expect.stringContaining("writes a road to drive with --out") });
  });

  it("is driven at typed speeds, or at the interval of its points", async () => {
    const [path] = logFiles({ "plan.gpx": route });
    const typed = await found(path, "--speeds", "11 km at 60 km/h");
    expect(typed.files[0]).toMatchObject({ format: "route", quality: "assumed" });
    expect(typed.total.distance_km).toBeCloseTo(11, 6);
    const timed = await found(path, "--interval", "4");
    expect(timed.files[0].format).toBe("gpx");
    expect(timed.total.distance_km).toBeCloseTo(11.07, 0);
  });
});
