import { readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemo, changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { driven, quick, root, tuner } from "./drivenTuner.ts";

describe("--step", () => {
  it("drives at even steps: finer ones come to the same energy", async () => {
    const [asRecorded, finer] = [await driven(quick()), await driven(quick(), "--step", "0.5")];
    const ratio = (finer.candidates[2]?.battery_Whpkm ?? 0) / (asRecorded.candidates[2]?.battery_Whpkm ?? 1);
    // Forces at the mean speed of a step: halving 1 s steps of straight lines moves only the products within a step.
    expect(Math.abs(ratio - 1)).toBeLessThan(0.002);
    expect(ratio).not.toBe(1);
    expect(finer.trace["distance_km"]).toBeCloseTo(Number(asRecorded.trace["distance_km"]), 9);
  });

  it("says that coarser steps cut corners", async () => {
    const { code, err } = await runCommand("drive", quick(), "--step", "10");
    expect(code).toBe(0);
    expect(err).toBe(
      "--step 10: coarser than the road's own samples, so corners are cut and distance and energy differ",
    );
  });

  it.each([["0"], ["-1"], ["fast"], ["61"], ["1e9"], ["NaN"], ["0.001"]])(
    "%s is refused with what is allowed",
    async (step) => {
      expect(await runCommand("drive", quick(), `--step=${step}`)).toEqual({
        code: 2,
        out: "",
        err: `--step: found "${step}", a number from 0.01 to 60 s is wanted`,
      });
    },
  );

  it("too fine for a long road is refused before the memory is full", async () => {
    const road = { kind: "trace", id: "long", title: "Long", time_s: [0, 1, 9e6], speed_kmh: [0, 1, 0] };
    const { code, err } = await runCommand("drive", changedDemoFile({ roads: [road] }), "--step", "1");
    expect({ code, err }).toEqual({
      code: 2,
      err: "--step: found 1 s for a road of 9000000 s, at least 1.8 s is wanted (5000000 steps)",
    });
  });
});

describe("what the car cannot do is found, not refused", () => {
  const found = async (changes: Readonly<Record<string, unknown>>, ...words: readonly string[]) => {
    const path = changedDemoFile({ origins: {}, ...changes });
    const report = await driven(path, ...words);
    expect((await runCommand("drive", path, ...words)).code).toBe(0);
    return report;
  };

  it("a pack above the controller's highest voltage", async () => {
    const { candidates, enough } = await found({ "packs.2.seriesModules": 8 });
    expect(candidates[2]?.findings[0]).toMatchObject({
      kind: "packAboveController",
      sentence: expect.stringContaining("Full, this pack has 202 V and the controller takes at most 140 V"),
    });
    expect(enough.packs[2]).toMatchObject({ isEnough: false });
  });

  it("a pack below the controller's lowest voltage", async () => {
    const { candidates, enough } = await found({ "packs.2.seriesModules": 2 });
    expect(candidates[2]).toMatchObject({ distance_km: 0, range_km: 0, battery_Whpkm: 0 });
    expect(candidates[2]?.findings.map(({ kind }) => kind)).toContain("packBelowController");
    expect(enough.packs[2]).not.toHaveProperty("dayUse_frac"); // it would be endless
  });

  it("a motor past its top speed in the chosen gear, with the road speed", async () => {
    const { candidates } = await found({ "driveline.shifting": { kind: "fixed", gear: "first" } }, "--trace", "hwfet");
    // 8000 rpm through 3.75 x 4.1111 on wheels of 284 mm.
    const top_kmh = ((8000 * 2 * Math.PI) / 60 / (3.75 * 4.1111)) * 0.284 * 3.6;
    expect(candidates[0]?.findings.find(({ kind }) => kind === "motorPastTopSpeed")?.sentence).toBe(
      `In first gear the motor is at its top speed at ${top_kmh.toPrecision(3)} km/h; the road asks for 96.4 km/h.`,
    );
    expect(candidates[0]?.missed_km).toBeGreaterThan(3);
  });

  it("a motor past its top speed before the next gear follows", async () => {
    const shifting = { kind: "bySpeed", gears: ["first", "third"], up_kmh: [70] };
    const { candidates } = await found({ "driveline.shifting": shifting });
    expect(candidates[0]?.findings.find(({ kind }) => kind === "motorPastTopSpeed")?.sentence).toBe(
      "In first gear the motor is at its top speed at 55.6 km/h; third gear follows at 70 km/h.",
    );
  });

  it("a car too weak for the road", async () => {
    const { candidates, enough } = await found({ "motor.envelope.power_kW": 3, "motor.envelope.torque_Nm": 30 });
    expect(candidates[0]?.missed_km).toBeGreaterThan(1);
    expect(candidates[0]?.findings[0]?.sentence).toMatch(/^Falls behind for [\d.]+ s .* the motor for/);
    expect(enough.pack).toBeNull();
  });

  it("a car that does not start, first of all, with what it needs and has", async () => {
    const capped = { "controller.torqueCap_Nm": 3 };
    const { candidates } = await found(capped);
    expect(candidates[0]?.findings[0]?.sentence).toMatch(
      /^The car does not start on this road: it needs [\d.]+ Nm at the motor in \w+ gear and has 3 Nm, limited by the controller/,
    );
    const { out } = await runCommand("drive", changedDemoFile(capped));
    expect(out.split("\n\n")[1]).toMatch(/^The car cannot drive this road\. The car does not start on this road/);
    expect(out).not.toMatch(/Falls behind|of it is missed/);
  });

  it("a pack that is empty on the way", async () => {
    const { candidates } = await found({ "packs.0.floor_frac": 0.9 });
    expect(candidates[0]).toMatchObject({ reachedFloor: true });
    expect(candidates[0]?.findings[0]?.sentence).toMatch(/^Empty on the way: /);
  });
});

describe("bad input ends in 2 with a sentence each, and nothing on standard output", () => {
  const refused = async (...words: readonly string[]) => {
    const { code, out, err } = await runCommand("drive", ...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    return err;
  };
  const trace = async (text: string) => {
    const path = join(emptyFolder(), "bad.csv");
    writeFileSync(path, text);
    return (await refused(tuner, "--trace", path)).split("\n");
  };

  it.each<[string, Record<string, unknown>, string]>([
    ["a negative mass", { "vehicle.kerb_kg": -5 }, "vehicle.kerb_kg: found -5 kg, above 0 and at most 20000 kg"],
    ["no mass", { "vehicle.kerb_kg": 0 }, "vehicle.kerb_kg: found 0 kg, above 0 and at most 20000 kg allowed"],
    [
      "a wheel of no size",
      { "vehicle.tyres.loadedRadius_mm": 0 },
      "loadedRadius_mm: found 0 mm, 100 to 900 mm allowed",
    ],
    ["a newer version", { version: 2 }, ": found version 2, this program reads up to version 1: open it with a newer"],
    [
      "an unknown cycle",
      { "roads.2.cycle": "wltc-class-3" },
      'roads.2.cycle: found "wltc-class-3", no cycle of this name; did you mean wltc-class-3b',
    ],
    [
      "900 km/h",
      { "roads.0": { kind: "trace", id: "a", title: "A", time_s: [0, 1], speed_kmh: [0, 900] } },
      "roads.0.speed_kmh.1: found 900 km/h, 0 to 400 km/h allowed",
    ],
    [
      "a road on which nothing moves",
      { "roads.0": { kind: "trace", id: "a", title: "A", time_s: [0, 1], speed_kmh: [0, 0] } },
      "roads.0.speed_kmh: found a speed of 0 km/h in every row",
    ],
  ])("%s, with the file and the path", async (_, changes, message) => {
    const path = changedDemoFile({ origins: {}, ...changes });
    const err = await refused(path);
    expect(err.startsWith(path)).toBe(true);
    expect(err.split("\n")).toHaveLength(1);
    expect(err).toContain(message);
  });

  it("every fault of a job at once", async () => {
    const err = await refused(changedDemoFile({ "vehicle.load_kg": -1, "packs.1.name": "8 kWh", motr: 1 }));
    expect(err.split("\n").map((line) => line.replace(/^\S+job\.json /, ""))).toEqual([
      "vehicle.load_kg: found -1 kg, 0 to 10000 kg allowed",
      "motr: found a key this program does not know, perhaps motor is meant",
      'packs.1.name: found "8 kWh" twice, names must differ',
    ]);
  });

  it("every unknown cycle of a job at once", async () => {
    const err = await refused(changedDemoFile({ "roads.0.cycle": "uds", "roads.3.cycle": "hwfe" }));
    expect(err.split("\n").map((line) => line.replace(/^.*; /, ""))).toEqual([
      "did you mean udds",
      "did you mean hwfet",
    ]);
  });

  it("a photograph, a table, a folder and nothing in place of a job", async () => {
    const folder = emptyFolder();
    const path = join(folder, "car.jpg");
    writeFileSync(path, Buffer.of(0xff, 0xd8, 0xff, 0xe0, 0, 16));
    expect(await refused(path)).toBe(
      `${path}: found bytes that are no text, as in a photograph; a text file in UTF-8 is wanted`,
    );
    writeFileSync(path, "time_s,speed_kmh\n0,0\n");
    expect(await refused(path)).toContain('found text that is not JSON (it begins "time_s,speed"), a saved job file');
    writeFileSync(path, "");
    expect(await refused(path)).toBe(`${path}: found nothing in it, a saved job file wanted`);
    expect(await refused(folder)).toBe(`${folder}: found a folder, a file is wanted`);
  });

  it("a job with a slip in its JSON, with the line", async () => {
    const path = join(emptyFolder(), "torn.json");
    writeFileSync(path, JSON.stringify(changedDemo({}), null, 1).slice(0, 300));
    expect(await refused(path)).toMatch(/torn\.json line \d+: found a slip in the JSON here or just before it/);
  });

  it("a missing file, with the nearest name or the way to write a demo", async () => {
    const path = changedDemoFile();
    expect(await refused(path.replace("job.json", "jab.json"))).toContain(
      "found no file of this name; did you mean job.json",
    );
    expect(await refused("piano-tuner")).toContain(
      "but a demo; bellhousing new my.bellhousing.json --from piano-tuner",
    );
  });

  it("no job, two jobs, an option that is not there", async () => {
    expect(await refused()).toBe("drive: found no job file, one is wanted; bellhousing new FILE writes one");
    expect(await refused(tuner, tuner)).toBe(`${tuner}: found a second argument, drive takes one job file`);
    expect(await refused(tuner, "--chanels", "a.csv")).toBe(
      "--chanels: found no option of this name; did you mean --channels",
    );
  });

  it("an unknown road, with the nearest of the job's and of the cycles", async () => {
    const roads = "found no road of the job (udds, harbour, wltc, coast) and no cycle of this name";
    expect(await refused(tuner, "--trace", "harbor")).toBe(`harbor: ${roads}; did you mean harbour`);
    expect(await refused(tuner, "--trace", "wltc-class-3")).toContain(`${roads}; did you mean wltc-class-3b`);
    expect(await refused(tuner, "--trace", "wltc-class-3b:lov")).toContain("did you mean wltc-class-3b:low");
    expect(await refused(tuner, "--trace", "rally-stage")).toContain(`${roads}; the cycles are udds, hwfet`);
    expect(await refused(tuner, "--trace", "./none.csv")).toBe("./none.csv: found no file of this name");
  });

  it("an empty trace, one of a single point, one of blanks and worse", async () => {
    expect(await trace("")).toEqual([expect.stringContaining("bad.csv: found nothing in it")]);
    expect(await trace("time_s,speed_kmh\n")).toEqual([expect.stringContaining("found a header and no row")]);
    expect(await trace("time_s,speed_kmh\n0,5\n")).toEqual(["bad.csv: found one row, at least two are wanted"]);
    expect(await trace("time_s,speed_kmh\n0,0\n2,NaN\n1,\n3,900\n")).toEqual([
      'bad.csv line 3: found "NaN" in speed_kmh, a plain number such as 12.5 is wanted',
      "bad.csv line 4: found 1 s after 2 s, times must rise",
      "bad.csv line 4: found nothing in speed_kmh, a number is wanted",
      "bad.csv line 5: found 900 km/h, at most 400 km/h is allowed",
    ]);
  });

  it("a name for the channels that is a file which is read, through a link too", async () => {
    const job = changedDemoFile();
    const folder = emptyFolder();
    const link = join(folder, "link.csv");
    symlinkSync(job, link);
    const road = join(folder, "road.csv");
    const rows = "time_s,speed_kmh\n0,0\n9,30\n20,0\n";
    writeFileSync(road, rows);
    const before = readFileSync(job, "utf8");
    const cycle = join(root, "cycles/udds.csv");
    const table = readFileSync(cycle, "utf8");
    for (const words of [
      [job, "--channels", job],
      [job, "--channels", link],
      [job, "--trace", road, "--channels", road],
      [job, "--channels", cycle],
    ]) {
      expect(await refused(...words)).toContain("found a file that is read, it is left as it is; choose another name");
    }
    expect(await refused(job, "--channels", "out.json")).toContain("found a name without .csv at its end");
    expect(await refused(job, "--channels", join(folder, "none/out.csv"))).toContain("found no folder");
    expect(readFileSync(job, "utf8")).toBe(before);
    expect(readFileSync(road, "utf8")).toBe(rows);
    expect(readFileSync(cycle, "utf8")).toBe(table);
  });
});
