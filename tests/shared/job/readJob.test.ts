import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { withPath } from "../../../shared/job/path.ts";
import { readJob, readJobText } from "../../../shared/job/readJob.ts";
import { InputError, type Problem } from "../../../shared/problems.ts";
import { changedDemo } from "../../support/changedDemo.ts";

const old = join(import.meta.dirname, "../../fixtures/documents");

function problemsIn(read: () => unknown): readonly Problem[] {
  try {
    read();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

/** Each fault as the command line prints it. */
function said(changes: Readonly<Record<string, unknown>>): string[] {
  return problemsIn(() => readJob(changedDemo(changes))).map(({ where, message }) => `${where}: ${message}`);
}

describe("one fault, with its path, what was found and what is allowed", () => {
  it.each<[Record<string, unknown>, string]>([
    [{ "vehicle.kerb_kg": -5 }, "vehicle.kerb_kg: found -5 kg, above 0 and at most 20000 kg allowed"],
    [{ "vehicle.kerb_kg": 0 }, "vehicle.kerb_kg: found 0 kg, above 0 and at most 20000 kg allowed"],
    [{ "vehicle.tyres.loadedRadius_mm": 0 }, "vehicle.tyres.loadedRadius_mm: found 0 mm, 100 to 900 mm allowed"],
    [{ "vehicle.load_kg": 20_000 }, "vehicle.load_kg: found 20000 kg, 0 to 10000 kg allowed"],
    [{ "vehicle.load_kg": "heavy" }, 'vehicle.load_kg: found "heavy", a number from 0 to 10000 kg wanted'],
    [{ "vehicle.load_kg": "" }, 'vehicle.load_kg: found "", a number from 0 to 10000 kg wanted'],
    [{ "vehicle.load_kg": null }, "vehicle.load_kg: found an empty value, a number from 0 to 10000 kg wanted"],
    [{ usualDay_km: Number.NaN }, "usualDay_km: found NaN, a number above 0 and at most 2000 km wanted"],
    [{ usualDay_km: undefined }, "usualDay_km: found nothing, a number above 0 and at most 2000 km wanted"],
    [{ "charger.efficiency_frac": 1.2 }, "charger.efficiency_frac: found 1.2, 0.3 to 1 allowed"],
    [{ "module.seriesCells": 2.5 }, "module.seriesCells: found 2.5, a whole number wanted"],
    [{ controller: undefined }, "controller: found nothing, a group of values wanted"],
    [{ packs: [] }, "packs: found 0 entries, at least 1 wanted"],
    [{ "packs.0.name": " " }, "packs.0.name: found an empty text, at least one letter wanted"],
    [{ "module.openCircuit.soc_frac": {} }, "module.openCircuit.soc_frac: found a group of values, a list wanted"],
    [{ isInvented: "yes" }, 'isInvented: found "yes", true or false wanted'],
    [{ "driveline.drivenAxle": "left" }, 'driveline.drivenAxle: found "left", one of "front", "rear", "both" wanted'],
    [{ "roads.0.kind": "circle" }, 'roads.0.kind: found "circle", "cycle" or "trace" wanted'],
    [
      { "origins.usualDay_km.from": "hearsay" },
      'origins.usualDay_km.from: found "hearsay", one of "typed", "measured", "handbook", "usual", "guessed" wanted',
    ],
  ])("%j", (changes, sentence) => {
    expect(said(changes)).toEqual([sentence]);
  });
});

describe("a value that contradicts another one", () => {
  it.each<[Record<string, unknown>, string]>([
    [{ "packs.1.name": "8 kWh" }, 'packs.1.name: found "8 kWh" twice, names must differ'],
    [{ "roads.1.id": "udds" }, 'roads.1.id: found "udds" twice, ids must differ'],
    [
      { "vehicle.removed_kg": 1000 },
      "vehicle.removed_kg: found 1000 kg taken out of 952.544 kg, less than the whole car wanted",
    ],
    [{ "packs.2.ceiling_frac": 0.1 }, "packs.2.ceiling_frac: found 0.1, above floor_frac (0.1) wanted"],
    [{ "packs.2.regenTo_frac": 0.1 }, "packs.2.regenTo_frac: found 0.1, above floor_frac (0.1) wanted"],
    [{ "controller.max_V": 75 }, "controller.max_V: found 75 V, above min_V (75 V) wanted"],
    [{ "module.cellMax_V": 2.8 }, "module.cellMax_V: found 2.8 V, above cellMin_V (2.8 V) wanted"],
    [
      { "driveline.shifting.gears": ["second", "thrid"] },
      'driveline.shifting.gears.1: found "thrid", the gears are first, second, third, fourth',
    ],
    [
      { "driveline.shifting.up_kmh": [] },
      "driveline.shifting.up_kmh: found 0 speeds, 1 wanted: one fewer than the gears",
    ],
    [
      { "environment.altitude_m": 300 },
      "environment.altitude_m: found a pressure and an altitude, one of them wanted: each says how dense the air is",
    ],
    [
      { "module.openCircuit": { soc_frac: [0, 0.5, 1], cell_V: [3, 3.6, 3.5] } },
      "module.openCircuit.cell_V.2: found 3.5 V after 3.6 V, open-circuit voltage may not fall as charge rises",
    ],
    [
      { "module.openCircuit": { soc_frac: [0, 0.5, 1], cell_V: [3, 3.6] } },
      "module.openCircuit.cell_V: found 2 values, 3 wanted: one for each of soc_frac",
    ],
    [
      { "vehicle.roadLoad": { kind: "coastDown", f0_N: 100, f1_Npkmh: -10, f2_Npkmh2: 0, mass_kg: 1000 } },
      "vehicle.roadLoad.f1_Npkmh: found terms that make -1400 N at 150 km/h, 0 N or more wanted up to 150 km/h",
    ],
    [
      { "vehicle.roadLoad": { kind: "coastDown", f0_N: 100, f1_Npkmh: -10, f2_Npkmh2: 0.1, mass_kg: 1000 } },
      "vehicle.roadLoad.f1_Npkmh: found terms that make -150 N at 50 km/h, 0 N or more wanted up to 150 km/h",
    ],
    [
      { origins: { "vehicle.colour": { from: "typed" } } },
      "origins.vehicle.colour: found an origin of a value that no job has",
    ],
    [
      { origins: { "packs.first.name": { from: "typed" } } },
      "origins.packs.first.name: found an origin of a value that no job has",
    ],
  ])("%j", (changes, sentence) => {
    expect(said(changes)).toEqual([sentence]);
  });

  it("is not seen in a coast-down whose term of speed is negative and whose force never is", () => {
    const roadLoad = { kind: "coastDown", f0_N: 100, f1_Npkmh: -2, f2_Npkmh2: 0.05, mass_kg: 1000 };
    expect(said({ "vehicle.roadLoad": roadLoad })).toEqual([]);
  });
});

describe("a document of another shape", () => {
  const wrong: readonly unknown[] = [{}, [], { length: 3 }, [null], null, "x", 3];

  it("is refused with sentences at whatever place it is wrong", () => {
    let refused = 0;
    for (const path of groupsIn(demos[0].document)) {
      for (const value of wrong) {
        const problems = problemsIn(() => readJob(withPath(demos[0].document, path, value)));
        if (problems.length > 0) refused++;
      }
    }
    expect(refused).toBeGreaterThan(300);
  });

  it("names the list in whose place it found a group", () => {
    expect(said({ "module.openCircuit.soc_frac": {} })).toEqual([
      "module.openCircuit.soc_frac: found a group of values, a list wanted",
    ]);
  });
});

describe("a document larger than any job", () => {
  it("is refused by the count of its origins before any of them is looked at", () => {
    const origins = Object.fromEntries(Array.from({ length: 1e6 }, (_, i) => [`vehicle.name.${i}`, { from: "typed" }]));
    expect(said({ origins })).toEqual(["origins: found 1000000 values by name, at most 2000 allowed"]);
  });

  it("is refused by the count of its samples", () => {
    const time_s = Array.from({ length: 1e6 }, (_, i) => i);
    const road = (id: string) => ({ kind: "trace", id, title: id, time_s, speed_kmh: time_s });
    expect(said({ roads: ["a", "b", "c", "d", "e"].map(road) })).toEqual([
      "document: found more than 8000000 values, at most as many allowed in a job",
    ]);
  });
});

/** Paths of all lists and groups in a document. */
function groupsIn(value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, each]) => groupsIn(each, path === "" ? key : `${path}.${key}`));
  return path === "" ? inner : [path, ...inner];
}

describe("a recorded road", () => {
  const road = { kind: "trace", id: "own", title: "Own" };

  it.each<[readonly unknown[], readonly unknown[], readonly string[]]>([
    [[], [], ["time_s: found 0 entries, at least 2 wanted", "speed_kmh: found 0 entries, at least 2 wanted"]],
    [[0], [30], ["time_s: found 1 entry, at least 2 wanted", "speed_kmh: found 1 entry, at least 2 wanted"]],
    [[0, 2, 1], [0, 5, 5], ["time_s.2: found 1 s after 2 s, times must rise"]],
    [[0, 1, 1], [0, 5, 5], ["time_s.2: found 1 s after 1 s, times must rise"]],
    [[0, 1], [0, 900], ["speed_kmh.1: found 900 km/h, 0 to 400 km/h allowed"]],
    [[0, 1], [0, -1], ["speed_kmh.1: found -1 km/h, 0 to 400 km/h allowed"]],
    [[0, 1], [0, ""], ['speed_kmh.1: found "", a number from 0 to 400 km/h wanted']],
    [[0, 1], [0, Number.NaN], ["speed_kmh.1: found NaN, a number from 0 to 400 km/h wanted"]],
    [[0, 1, 2], [0, 5], ["speed_kmh: found 2 values, 3 wanted: one for each of time_s"]],
  ])("of %j s and %j km/h says what is wrong", (time_s, speed_kmh, sentences) => {
    expect(said({ "roads.0": { ...road, time_s, speed_kmh } })).toEqual(sentences.map((one) => `roads.0.${one}`));
  });

  it("with a thousand wrong entries lists a hundred and counts the rest", () => {
    const time_s = Array.from({ length: 1000 }, (_, i) => i);
    const problems = problemsIn(() =>
      readJob(changedDemo({ "roads.0": { ...road, time_s, speed_kmh: time_s.map(() => 900) } }), "job.json"),
    );
    expect(problems).toHaveLength(101);
    expect(problems.at(-1)).toEqual({
      code: "moreFaults",
      where: "job.json",
      message: "found 900 more faults of these kinds",
    });
  });
});

describe("several faults", () => {
  it("in different groups and between values are all said in one go", () => {
    const problems = problemsIn(() =>
      readJob(
        changedDemo({
          usualDay_km: "far",
          "vehicle.load_kg": -1,
          "vehicle.removed_kg": 2000,
          "vehicle.lode_kg": 3,
          "driveline.shifting.gears": ["second", "fifth"],
          "driveline.finalDrive_ratio": 0,
          "motor.kind": "steam",
          "controller.max_V": 5,
          "controller.rollBackBelow_V": "x",
          "module.mass_kg": 0,
          "module.cellMax_V": 2,
          "packs.0.leads_mohm": -1,
          "packs.1.name": "8 kWh",
          "packs.3.floor_frac": 0.95,
        }),
      ),
    );
    expect(problems.map(({ code, where }) => `${code} ${where}`).sort()).toEqual(
      [
        "wrongType usualDay_km",
        "outOfRange vehicle.load_kg",
        "contradicts vehicle.removed_kg",
        "unknownKey vehicle.lode_kg",
        "contradicts driveline.shifting.gears.1",
        "outOfRange driveline.finalDrive_ratio",
        "notAllowed motor.kind",
        "contradicts controller.max_V",
        "wrongType controller.rollBackBelow_V",
        "outOfRange module.mass_kg",
        "contradicts module.cellMax_V",
        "outOfRange packs.0.leads_mohm",
        "contradicts packs.1.name",
        "contradicts packs.3.ceiling_frac",
      ].sort(),
    );
  });

  it("do not make a value contradict one that is at fault itself", () => {
    expect(said({ "vehicle.kerb_kg": -5, "packs.0.floor_frac": 2 })).toHaveLength(2);
    expect(said({ packs: "none", roads: [3], vehicle: null })).toHaveLength(3);
  });
});

describe("a key the program does not know", () => {
  it.each([
    ["vehicle.kerb_kg", "vehicle.kerbb_kg", "kerb_kg"],
    ["motor", "motr", "motor"],
    ["packs.0.seriesModules", "packs.0.seriesmodules", "seriesModules"],
    ["roads.0.cycle", "roads.0.cycel", "cycle"],
    ["environment.temperature_degC", "environment.temprature_degC", "temperature_degC"],
    ["motor.envelope.torque_Nm", "motor.envelope.torque", "torque_Nm"],
    ["origins.usualDay_km.note", "origins.usualDay_km.nota", "note"],
  ])("in place of %s is said with what may be meant", (right, wrong, meant) => {
    expect(said({ [right]: undefined, [wrong]: 1 })).toContain(
      `${wrong}: found a key this program does not know, perhaps ${meant} is meant`,
    );
  });

  it("far from every known one is said without a guess", () => {
    expect(said({ "vehicle.colour": "green" })).toEqual(["vehicle.colour: found a key this program does not know"]);
  });
});

describe("what is no job of this program", () => {
  const text = (is: string) => problemsIn(() => readJobText(is, "shop.json")).map((one) => one);

  it.each<[unknown, string]>([
    [{ version: 2 }, "found version 2, this program reads up to version 1: open it with a newer program"],
    [{ format: "recipe" }, 'found "recipe" as its format, "bellhousing-job" wanted'],
    [{ format: undefined }, 'found nothing as its format, "bellhousing-job" wanted'],
  ])("%j", (changes, message) => {
    const problems = problemsIn(() => readJob(changedDemo(changes as Record<string, unknown>), "shop.json"));
    expect(problems.map(({ where, message }) => ({ where, message }))).toEqual([{ where: "shop.json", message }]);
  });

  it("of a newer version is not looked into any further", () => {
    const problems = problemsIn(() => readJob(changedDemo({ version: 2, vehicle: null, wings: 2 })));
    expect(problems.map(({ code }) => code)).toEqual(["newerVersion"]);
  });

  it.each([[0], [1.5], ["1"], [undefined]])("with version %j is refused", (version) => {
    expect(problemsIn(() => readJob(changedDemo({ version }))).map(({ where }) => where)).toEqual(["version"]);
  });

  it.each([[[]], [null], [5], ["job"]])("%j is refused", (json) => {
    expect(problemsIn(() => readJob(json)).map(({ code }) => code)).toEqual(["notAJob"]);
  });

  it("is not JSON: what it begins with is said", () => {
    expect(text("car,mass\nsaloon,950")).toEqual([
      {
        code: "notJson",
        where: "shop.json",
        message: 'found text that is not JSON (it begins "car,mass·sal"), a saved job file wanted',
      },
    ]);
    expect(text("  \n")[0]?.message).toBe("found nothing in it, a saved job file wanted");
  });

  it("has a slip in its JSON: the line is said", () => {
    const lines = JSON.stringify(changedDemo({}), null, 2).split("\n");
    lines[20] = lines[20]?.replace(",", "") ?? "";
    const places = [text(lines.join("\n")), text(lines.slice(0, 10).join("\n"))].map(([problem]) => problem?.where);
    // The missing comma is noticed at the next word, one line on; a torn file ends at its last line.
    expect(places).toEqual(["shop.json line 22", "shop.json line 10"]);
  });
});

describe("a job that was read", () => {
  it.each(demos.map(({ id, document }) => [id, document] as const))(
    "%s comes back the same from its own text",
    (_, document) => {
      const job = readJob(document);
      expect(readJobText(JSON.stringify(job), "again.json")).toEqual(job);
      // Every value of the file is in the job as it was, beside what the file leaves to the usual values.
      expect(job).toMatchObject(document as object);
    },
  );

  it("may begin with a byte order mark, as some editors write it", () => {
    expect(readJobText(`\uFEFF${JSON.stringify(changedDemo({}))}`, "mark.json")).toEqual(readJob(changedDemo({})));
  });
});

describe("a document of an earlier day loads", () => {
  const files = readdirSync(old);
  expect(files.length).toBeGreaterThanOrEqual(3);

  it.each(files)("%s", (file) => {
    const text = readFileSync(join(old, file), "utf8");
    expect(readJobText(text, file).title).toBe((JSON.parse(text) as { title: string }).title);
  });

  it.each(files)("%s, with its kerb weight and where that is from", (file) => {
    const text = readFileSync(join(old, file), "utf8");
    const before = JSON.parse(text) as { vehicle: { arriving_kg: number }; origins: Record<string, unknown> };
    const { vehicle, origins } = readJobText(text, file);
    expect(vehicle.kerb_kg).toBe(before.vehicle.arriving_kg);
    expect(origins["vehicle.kerb_kg"]).toMatchObject(before.origins["vehicle.arriving_kg"] as object);
  });

  it("but not with a former name beside the one of today", () => {
    expect(said({ "vehicle.arriving_kg": 900 })).toEqual([expect.stringContaining("arriving_kg")]);
  });
});
