import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { demos } from "../../shared/demos/index.ts";
import { readJob, readJobText } from "../../shared/job/readJob.ts";
import { modules } from "../../shared/parts/modules.ts";
import { motors } from "../../shared/parts/motors.ts";
import type { QuantityKind } from "../../shared/quantity/kinds/kinds.ts";
import { readQuantity } from "../../shared/quantity.ts";

/** How the field at the end of a path is read. */
const kindsByEnd: readonly [RegExp, QuantityKind][] = [
  [/_kg$/, "mass"],
  [/_km$/, "distance"],
  [/_Nm$/, "torque"],
  [/\.gear_ratio$/, "gearRatio"],
  [/\.finalDrive_ratio$/, "finalDrive"],
];

/** The value at a path such as `vehicle.tyres.loadedRadius_mm` or `packs.0.name`, undefined where there is none. */
function valueAt(document: unknown, path: string): unknown {
  return path.split(".").reduce<unknown>((value, key) => {
    return typeof value === "object" && value !== null ? (value as Record<string, unknown>)[key] : undefined;
  }, document);
}

it("there is a demo for each file in the folder, each id once", () => {
  const files = readdirSync("shared/demos").filter((file) => file.endsWith(".bellhousing.json"));
  expect(demos.map(({ id }) => `${id}.bellhousing.json`).sort()).toEqual(files.sort());
  expect(demos.length).toBe(3);
});

it("the piano tuner's saloon comes first, with the plain published urban cycle first and five packs", () => {
  const job = readJob(demos[0].document);
  expect(demos[0].id).toBe("piano-tuner");
  expect(job.roads[0]).toEqual({ kind: "cycle", id: "udds", title: "Published urban cycle", cycle: "udds" });
  expect(job.packs).toHaveLength(5);
});

describe.each(demos.map(({ id, document }) => [id, document] as const))("%s", (id, document) => {
  const job = readJob(document);

  it("reads from its file as it does from the program", () => {
    const text = readFileSync(`shared/demos/${id}.bellhousing.json`, "utf8");
    expect(readJobText(text, id)).toEqual(job);
  });

  it("says that it is invented and what it is for in the client's words", () => {
    expect(job.isInvented).toBe(true);
    expect(job.use.length).toBeGreaterThan(80);
    expect(job.usualDay_km).toBeLessThan(job.longestDay_km ?? 0);
  });

  it("has at least twenty origins, each of a value that is in the file", () => {
    const paths = Object.keys(job.origins);
    expect(paths.length).toBeGreaterThanOrEqual(20);
    expect(paths.filter((path) => valueAt(document, path) === undefined)).toEqual([]);
  });

  it("holds what was typed, as the field would have understood it", () => {
    const typed = Object.entries(job.origins).filter(([, origin]) => origin.typed !== undefined);
    expect(typed.length).toBeGreaterThanOrEqual(3);
    for (const [path, origin] of typed) {
      const kind = kindsByEnd.find(([end]) => end.test(path))?.[1];
      if (!kind) throw new Error(`no kind of quantity for ${path}`);
      const reading = readQuantity(kind, origin.typed ?? "", { cwt: "112" });
      const read = reading.ok && !reading.unknown ? reading.value : Number.NaN;
      // The file rounds to three digits at the least: half of the third one.
      expect(Math.abs(Number(valueAt(document, path)) / read - 1), path).toBeLessThan(0.005);
    }
  });

  it("knows measured, handbook, usual and guessed values", () => {
    const sorts = new Set(Object.values(job.origins).map(({ from }) => from));
    expect([...sorts].sort()).toEqual(["guessed", "handbook", "measured", "usual"]);
  });

  it("takes its motor and module from the generic parts as they are", () => {
    // The rotor's inertia may differ: a kept flywheel and clutch turn with it.
    const { rotorInertia_kgm2, fullCurrent_A: _nameplate, ...motor } = job.motor;
    const sameMotor = motors.find(({ data }) => data.name === motor.name)?.data;
    expect(sameMotor).toEqual({ ...motor, rotorInertia_kgm2: sameMotor?.rotorInertia_kgm2 });
    expect(rotorInertia_kgm2).toBeGreaterThanOrEqual(sameMotor?.rotorInertia_kgm2 ?? Number.POSITIVE_INFINITY);
    expect(modules.map(({ data }) => data)).toContainEqual(job.module);
  });

  it("has packs inside the voltage window of controller and charger, full and flat", () => {
    for (const pack of job.packs) {
      const cells = pack.seriesModules * job.module.seriesCells;
      expect(cells * job.module.cellMax_V, pack.name).toBeLessThan(0.98 * job.controller.max_V);
      expect(cells * job.module.cellMax_V, pack.name).toBeLessThanOrEqual(job.charger.max_V ?? 0);
      expect(cells * job.module.cellMin_V, pack.name).toBeGreaterThanOrEqual(job.controller.min_V);
    }
  });

  it("names each pack by its open-circuit energy", () => {
    const { soc_frac, cell_V } = job.module.openCircuit;
    const steps = soc_frac.slice(1).map((soc, i) => 0.5 * (cell_V[i + 1] + cell_V[i]) * (soc - soc_frac[i]));
    const module_kWh =
      (steps.reduce((sum, step) => sum + step, 0) * job.module.seriesCells * job.module.capacity_Ah) / 1000;
    for (const { name, seriesModules, parallelModules } of job.packs) {
      const energy_kWh = module_kWh * seriesModules * parallelModules;
      expect(name).toMatch(/^\d+ kWh$/);
      expect(Math.abs(Number.parseInt(name, 10) - energy_kWh), name).toBeLessThan(0.75);
    }
  });

  it("weighs no more than its plate with the heaviest pack", () => {
    const { kerb_kg, removed_kg, added_kg, load_kg, gross_kg } = job.vehicle;
    for (const { seriesModules, parallelModules, boxes_frac } of job.packs) {
      const pack_kg = seriesModules * parallelModules * job.module.mass_kg * (1 + boxes_frac);
      expect(kerb_kg - removed_kg + added_kg + load_kg + pack_kg).toBeLessThanOrEqual(gross_kg ?? 0);
    }
  });

  it("drives only on standard cycles that are on board", () => {
    for (const road of job.roads) {
      if (road.kind === "cycle") expect(existsSync(`cycles/${road.cycle.split(":")[0]}.csv`), road.cycle).toBe(true);
    }
    expect(job.roads.some((road) => road.hills) || id === "bakery-van").toBe(true);
  });
});

it("one demo has measured coast-down coefficients, one a part-time transfer box with low range and free hubs", () => {
  const jobs = demos.map(({ document }) => readJob(document));
  expect(jobs.map(({ vehicle }) => vehicle.roadLoad.kind)).toEqual(["physical", "coastDown", "physical"]);
  expect(jobs.map(({ driveline }) => driveline.transferBox?.hubs)).toEqual([undefined, undefined, "free"]);
});
