import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { driven, quick } from "../commands/drivenTuner.ts";

describe("--trace", () => {
  it("is left out for the job's first road", async () => {
    expect((await driven(quick())).trace).toMatchObject({
      id: "udds",
      title: "Published urban cycle",
      duration_s: 1369,
    });
  });

  it("names a road of the job before it names a cycle", async () => {
    const path = changedDemoFile({ "roads.1.id": "nycc", origins: {} });
    expect((await driven(path, "--trace", "nycc")).trace).toMatchObject({ duration_s: 1369, climb_m: 120 });
    expect((await driven(path, "--trace", "hwfet")).trace).toMatchObject({ id: "hwfet", duration_s: 765 });
  });

  it("names a phase of a cycle", async () => {
    expect((await driven(quick(), "--trace", "wltc-class-3b:low")).trace).toMatchObject({
      id: "wltc-class-3b:low",
      duration_s: 589,
    });
  });

  it("names a file, with its heights", async () => {
    const path = join(emptyFolder(), "lane.csv");
    writeFileSync(path, "time_s,speed_mps,elevation_m\n0,0,10\n10,10,12\n20,10,18\n30,0,10\n");
    const { trace, candidates } = await driven(quick(), "--trace", path);
    expect(trace).toMatchObject({ id: "lane", duration_s: 30, distance_km: 0.2, max_kmh: 36, climb_m: 8 });
    expect(candidates[0]?.distance_km).toBeCloseTo(0.2, 3);
    // Up and down again: what the hill took it gave back.
    expect(Math.abs(candidates[0]?.ledger_Wh["climb"] ?? 1)).toBeLessThan(1e-6);
  });

  it("takes a road recorded in the job", async () => {
    const own = { kind: "trace", id: "own", title: "Own", time_s: [5, 15, 25, 40], speed_kmh: [0, 36, 36, 0] };
    const { trace } = await driven(changedDemoFile({ roads: [own], origins: {} }));
    expect(trace).toMatchObject({ id: "own", duration_s: 35, distance_km: 0.225 });
  });
});
