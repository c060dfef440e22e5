import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { demos } from "../../shared/demos/index.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { runVariants } from "../../sim/step/variants.ts";
import { cycleTrace } from "../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../support/cycleTexts.ts";
import { median } from "./median.ts";
import { createColumns, type ReducedCar, type ReducedPack, type ReducedTotals, reducedRun } from "./reducedStep.ts";

// What the language costs: the same reduced step in TypeScript, C and NumPy, measured by turns in one run, so that a busy machine
// slows all three. Ratios are medians. Figures to read, never a gate: `npm run bench`. Results that differ are an error, though.
const PAIRS = 7;
const REPETITIONS = 2000;
const TOLERANCE_ratio = 1e-9;

// An invented saloon on the mixed cycle, light enough that it ends with charge left.
const car: ReducedCar = {
  mass_kg: 1150,
  inertia_ratio: 1.03,
  gravity_mps2: 9.81,
  rolling_coeff: 0.0125,
  drag_Npmps2: 0.5 * 1.189 * 0.8,
  motor_radpm: (4.1 * 1.4) / 0.29,
  efficiency_frac: 0.9,
  copper_coeff: 0.2,
  iron_coeff: 0.8,
  windage_coeff: 6e-6,
  constant_W: 150,
  accessories_W: 260,
  capacity_C: 120 * 3600,
  startSoc_frac: 0.95,
};
const even = Array.from({ length: 65 }, (_, i) => i / 64);
const pack: ReducedPack = {
  openCircuit_V: Float64Array.from(even, (soc) => 92 + 24 * soc + 8 * (1 - Math.exp(-20 * soc))),
  resistance_ohm: Float64Array.from(even, (soc) => 0.03 + 0.02 * Math.exp(-10 * soc)),
};
const trace = cycleTrace("wltc-class-3b", cycleTexts);
const { speed_mps } = trace;
const job = readJob(demos[0].document);
const model = prepare(job, job.packs[2]);
const channels = createChannels(speed_mps.length);
const rows = speed_mps.length;
const steps = rows - 1;
const columns = createColumns(rows);
const totals: ReducedTotals = { energy_J: 0, soc_frac: 0 };
const massesFor = (variants: number) =>
  Float64Array.from({ length: variants }, (_, k) => car.mass_kg * (1 + k / (4 * variants)));

/** Nanoseconds a step of one recorded run of the project's own step, which does far more: limits, heat, ledger, peaks. */
function whole_ns(): number {
  const begin = process.hrtime.bigint();
  for (let k = 0; k < REPETITIONS / 20; k++) run(model, trace, channels);
  return Number(process.hrtime.bigint() - begin) / (REPETITIONS / 20) / steps;
}

/** 64 variants of a demo's largest pack, by their load: as many models as a study of what is not known drives by turns. */
const variantsOf = (demo: number) => {
  const base = readJob(demos[demo].document);
  const largest = base.packs[base.packs.length - 1];
  const first = { job: base, pack: largest, model: prepare(base, largest) };
  return Array.from({ length: 64 }, (_, i) => {
    const vehicle = { ...base.vehicle, load_kg: base.vehicle.load_kg + i };
    return prepare({ ...base, vehicle }, largest, first);
  });
};
/** A car that seldom meets a limit, and one that meets one in every eighth second. */
const free = variantsOf(0);
const limited = variantsOf(1);

/** Nanoseconds a vehicle-step of the project's own step, totals only, many models by turns. */
function variants_ns(models: typeof free): number {
  const begin = process.hrtime.bigint();
  runVariants(models, trace, (_, endSoc_frac) => {
    sink += endSoc_frac;
  });
  return Number(process.hrtime.bigint() - begin) / models.length / steps;
}

/** Nanoseconds a step of one recorded run. */
function single_ns(): number {
  const begin = process.hrtime.bigint();
  for (let k = 0; k < REPETITIONS; k++) reducedRun(car, pack, car.mass_kg, speed_mps, 1, totals, columns);
  return Number(process.hrtime.bigint() - begin) / REPETITIONS / steps;
}

/** Nanoseconds a vehicle-step of all variants, one after another, unrecorded; energy and charge of each into `ends`. */
function batch_ns(mass_kg: Float64Array, ends: Float64Array): number {
  const begin = process.hrtime.bigint();
  for (let k = 0; k < mass_kg.length; k++) {
    reducedRun(car, pack, mass_kg[k], speed_mps, 1, totals);
    ends[2 * k] = totals.energy_J;
    ends[2 * k + 1] = totals.soc_frac;
  }
  return Number(process.hrtime.bigint() - begin) / mass_kg.length / steps;
}

let sink = 0; // keeps the work from being dropped
const folder = mkdtempSync(join(tmpdir(), "bellhousing-staging-"));
try {
  compare();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
if (!Number.isFinite(sink)) throw new Error("a run came to no number");

function compare(): void {
  const binary = join(folder, "reducedStep");
  const source = join(import.meta.dirname, "reducedStep.c");
  const hasC =
    spawnSync("gcc", ["-O3", "-march=native", "-o", binary, source, "-lm"], { stdio: "ignore" }).status === 0;
  const hasNumPy = spawnSync("python3", ["-c", "import numpy"], { stdio: "ignore" }).status === 0;
  if (!hasC) console.log("no C compiler named gcc here: the C loop is left out");
  if (!hasNumPy) console.log("no python3 with numpy here: NumPy is left out");
  console.log(`\nreduced step over WLTC class 3b (${steps} steps), ns a vehicle-step, medians of ${PAIRS} by turns`);
  for (let k = 0; k < 3; k++) sink += single_ns() + whole_ns() + variants_ns(free) + variants_ns(limited); // warm

  for (const variants of [1000, 10_000]) {
    const mass_kg = massesFor(variants);
    const ends = new Float64Array(2 * variants);
    const input = join(folder, "input");
    const numbers = [rows, variants, 1, ...Object.values(car), ...pack.openCircuit_V, ...pack.resistance_ohm];
    writeFileSync(input, Float64Array.from([...numbers, ...mass_kg, ...speed_mps]));
    const figures: Record<"ts1" | "ts" | "c1" | "c" | "numpy" | "whole" | "free" | "limited", number>[] = [];
    for (let k = 0; k < PAIRS; k++) {
      const whole = whole_ns();
      const [freely, held] = [variants_ns(free), variants_ns(limited)];
      const ts1 = single_ns();
      const [c1, c] = hasC
        ? outside(binary, [input, join(folder, "c"), String(REPETITIONS)])
        : [Number.NaN, Number.NaN];
      const ts = batch_ns(mass_kg, ends);
      const [numpy] = hasNumPy
        ? outside("python3", [join(import.meta.dirname, "reducedStep.py"), input, join(folder, "numpy")])
        : [Number.NaN];
      figures.push({ ts1, ts, c1, c, numpy, whole, free: freely, limited: held });
    }
    if (hasC) checkRecorded(doubles("c"));
    if (hasC) checkSame("C", ends, doubles("c").subarray(8 * rows));
    if (hasNumPy) checkSame("NumPy", ends, doubles("numpy"));
    const of = (figure: (one: (typeof figures)[number]) => number) => median(figures.map(figure)).toFixed(2);
    if (variants === 1000) {
      console.log(`  one recorded run      TypeScript ${of((f) => f.ts1)}   C ${of((f) => f.c1)}`);
      console.log(`                        TypeScript/C ${of((f) => f.ts1 / f.c1)} (at most 2)`);
      console.log(
        `  the project's own step, recorded: ${of((f) => f.whole)}, to the reduced C loop ${of((f) => f.whole / f.c1)}`,
      );
      console.log(
        `  the same, totals only, 64 models by turns: ${of((f) => f.free)}, to the reduced C loop ${of((f) => f.free / f.c1)}; where limits bind ${of((f) => f.limited)}, ${of((f) => f.limited / f.c1)}`,
      );
    }
    console.log(
      `  ${variants} variants`.padEnd(23),
      `TypeScript ${of((f) => f.ts)}   C ${of((f) => f.c)}   NumPy ${of((f) => f.numpy)}\n`.padEnd(23),
      `                      TypeScript/C ${of((f) => f.ts / f.c)}   NumPy/TypeScript ${of((f) => f.numpy / f.ts)}`,
    );
  }
}

/** Runs a kernel of another language and gives back the figures that it printed. */
function outside(command: string, args: readonly string[]): number[] {
  const { status, stdout, stderr } = spawnSync(command, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${command} ended with ${status}: ${stderr}`);
  return stdout.trim().split(/\s+/).map(Number);
}

function doubles(name: string): Float64Array {
  const bytes = readFileSync(join(folder, name));
  return new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}

function checkRecorded(recorded: Float64Array): void {
  reducedRun(car, pack, car.mass_kg, speed_mps, 1, totals, columns);
  Object.entries(columns).forEach(([name, column], k) => {
    checkSame(`C, ${name}`, column, recorded.subarray(k * rows, (k + 1) * rows));
  });
}

/** Throws where two results differ by more than 1e-9 of their size. */
function checkSame(name: string, ours: Float64Array, theirs: Float64Array): void {
  if (ours.length !== theirs.length) throw new Error(`${name}: ${theirs.length} numbers instead of ${ours.length}`);
  const size = ours.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  ours.forEach((value, i) => {
    const scale = name.startsWith("C,") ? size : Math.abs(value);
    if (!(Math.abs(value - theirs[i]) <= TOLERANCE_ratio * scale))
      throw new Error(`${name}: ${theirs[i]} at ${i} instead of ${value}`);
  });
}
