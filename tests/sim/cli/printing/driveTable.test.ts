import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { driven, quick, tuner } from "../commands/drivenTuner.ts";

describe("the table", () => {
  it("has a line a pack with units above, at most three figures, and fits a terminal of 80 letters", async () => {
    const { code, out, err } = await runCommand("drive", tuner);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const lines = out.split("\n");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(out).toMatch(/pack +\(kg\) +\(Wh\/km\) +\(Wh\/km\) +\(km\) +\(A\) +\(kW\) +\(V\)/);
    const rows = lines
      .slice(lines.findIndex((line) => line.includes("(Wh/km)")) + 1)
      .filter((line) => /^\d+ kWh /.test(line));
    expect(rows).toHaveLength(5);
    for (const row of rows) {
      const cells = row.trim().split(/ {2,}/).slice(1);
      expect(cells).toHaveLength(7);
      for (const cell of cells) {
        const digits = cell
          .replace(/^-?[0.]*/, "")
          .replace(/0+$/, "")
          .replace(".", "");
        expect(digits.length, cell).toBeLessThanOrEqual(3);
      }
    }
  });

  it("gives the verdict first, in the words and with the kilometres of the page, and what holds for all packs once", async () => {
    const { out } = await runCommand("drive", tuner);
    const text = out.replace(/\n */g, " ");
    expect(text).toMatch(/level {2}13 kWh: enough\. A usual day of 38 km ends with about \d+ km left/);
    expect(out).toMatch(/^8 kWh +84 .*\d+ to \d+ short +not enough$/m);
    expect(out).toMatch(/^29 kWh +296( +\d+ to \d+){3} +more than enough$/m);
    expect(text.match(/treat it as deadly/g)).toHaveLength(1);
    expect(text).not.toContain("not comparable");
  });

  it("writes how long a road takes in one way on both sides of two minutes", async () => {
    const takes = async (last_s: number) => {
      const road = join(emptyFolder(), "road.csv");
      writeFileSync(road, `time_s,speed_kmh\n0,0\n20,30\n100,30\n${last_s},0\n`);
      return (await runCommand("drive", quick(), "--trace", road)).out.match(/ km in (.*?), mean/)?.[1];
    };
    expect(await takes(119)).toBe("119 s");
    expect(await takes(119.7)).toBe("2 min");
    expect(await takes(120)).toBe("2 min");
  });

  it("says of a pack that is only just enough what to measure first, and which pack would do without", async () => {
    const { out } = await runCommand("drive", "shared/demos/bakery-van.bellhousing.json");
    expect(out.replace(/\n */g, " ")).toMatch(
      /28 kWh: only just\. .* it may end \d+ km short; 33 kWh would not\. .* Measure first: weighing the car/,
    );
  });

  it("shows a stop in place of a range and of kilometres left", async () => {
    const { out } = await runCommand("drive", changedDemoFile({ "packs.2.seriesModules": 8 }));
    expect(out).toMatch(/^17 kWh +270 +- +- +- +stop$/m);
    expect(out.replace(/\n */g, " ")).toContain(
      "17 kWh: stop. Full, this pack has 202 V. The controller takes 140 V at most and would be destroyed. Use 5 in series, or change the controller.",
    );
    expect(out).not.toMatch(/^17 kWh .* \d+ +\d+ +\d+ +\d+ +\d+ +\d+$/m);
  });

  it("says that Wh/km are not comparable where packs drove different distances", async () => {
    const { out } = await runCommand("drive", tuner, "--trace", "wltc");
    expect(out.replace(/\n */g, " ")).toMatch(
      /The packs drove different distances \([\d.]+ to [\d.]+ km\), so their Wh\/km are not comparable/,
    );
    expect(out).toMatch(/^! 8 kWh: Falls behind for/m);
  });

  it("says at least where driving on ended after a day", async () => {
    // A slow road and a pack that outlasts it: nothing but the clock ends the driving.
    const road = { kind: "trace", id: "slow", title: "Slow", time_s: [0, 10, 590, 600], speed_kmh: [0, 4, 4, 0] };
    const path = changedDemoFile({
      origins: {},
      roads: [road],
      "packs.0.parallelModules": 90,
      "accessories.standing_W": 0,
    });
    expect((await driven(path)).candidates[0]?.rangeEnd).toBe("time");
    expect((await runCommand("drive", path)).out).toMatch(/ over [\d.]+ /);
  });
});
