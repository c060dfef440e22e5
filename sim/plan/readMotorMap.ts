import type { MotorLoss } from "../../shared/job/motor.ts";
import { InputError, inputError, type Problem } from "../../shared/problems.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../shared/units.ts";
import { fillLosses } from "../motor/fillLosses.ts";
import type { FourTermLaw } from "../motor/loss.ts";
import { type MapCell, type MapCells, type MapValues, readMotorMapCells } from "./readMotorMapCells.ts";

/** A motor map read from a file: losses of motor and controller in watts, rows by speed, columns by torque. */
export interface MotorMap {
  readonly speed_rpm: readonly number[];
  readonly speed_radps: readonly number[];
  readonly torque_Nm: readonly number[];
  readonly loss_W: readonly (readonly number[])[];
  /** Nodes the file had; the others were filled. */
  readonly givenCount: number;
  readonly filledCount: number;
  /** The four-term law that filled them. */
  readonly law: FourTermLaw;
  /** How the file was understood, in sentences for the person who brought it. */
  readonly notes: readonly string[];
}

const most = { speed: 30_000, torque: 10_000 } as const; // rpm, Nm: as in the job file
const mostNodes = 500; // of an axis, as in the job file
const mostProblems = 12;
const nearby_frac = 0.004; // of an axis: a measured 1998 rpm and 2003 rpm are one node

/**
 * A motor's efficiency or loss map from CSV, as losses in watts on a grid that begins at no speed and no torque.
 *
 *   loss = T w (1/η − 1) driving,  |T| w (1 − η) for torques below zero
 *
 * The map may have speed down or across, or be a long table; efficiencies may be shares or percentages, losses watts or
 * kilowatts; cells may be missing. Efficiency means nothing at no torque or speed, so those edges, and
 * gaps, are filled by `fillLosses`.
 *
 * Throws an InputError for an efficiency above 100 %, fewer than two speeds or torques above zero, points that are no
 * grid, a node given twice, values below zero.
 */
export function readMotorMap(name: string, text: string): MotorMap {
  const read = readMotorMapCells(name, text);
  const notes = [...read.notes];
  const { isLoss, scale, says } = valueScale(name, read);
  notes.push(says);
  const problems: Problem[] = [];
  const speed_rpm = axis(
    name,
    "speed",
    "rpm",
    read.cells.map((cell) => cell.speed_rpm),
    problems,
  );
  const torque_Nm = axis(
    name,
    "torque",
    "Nm",
    read.cells.map((cell) => cell.torque_Nm),
    problems,
  );
  if (problems.length > 0) throw new InputError(problems);

  const known_W: (number | undefined)[][] = speed_rpm.map(() =>
    new Array<number | undefined>(torque_Nm.length).fill(undefined),
  );
  let givenCount = 0;
  for (const cell of read.cells) {
    const i = nearest(speed_rpm, cell.speed_rpm);
    const j = nearest(torque_Nm, cell.torque_Nm);
    const where = `${name} line ${cell.line}`;
    const loss_W = isLoss ? lossGiven(where, cell, scale, problems) : lossOfEfficiency(where, cell, scale, problems);
    if (loss_W === undefined) continue;
    if (known_W[i][j] !== undefined) {
      problems.push({
        code: "map-twice",
        where,
        message: `found ${speed_rpm[i]} rpm, ${torque_Nm[j]} Nm a second time, each is wanted once`,
      });
    }
    known_W[i][j] = loss_W;
    givenCount++;
  }
  if (problems.length > 0) throw new InputError(problems.slice(0, mostProblems));
  const nodeCount = speed_rpm.length * torque_Nm.length;
  if (givenCount < nodeCount / 4) {
    const message = `found ${givenCount} values over ${speed_rpm.length} speeds and ${torque_Nm.length} torques, wanted a grid: the same torques at each speed`;
    throw inputError("map-scattered", name, message);
  }
  if (!known_W.some((row) => row.some((loss_W) => loss_W !== undefined && loss_W > 0))) {
    throw inputError(
      "map-lossless",
      name,
      "found no loss anywhere, wanted efficiencies below 100 % or losses above 0 W",
    );
  }
  const speed_radps = speed_rpm.map((speed) => speed * RADPS_PER_RPM);
  const { loss_W, law } = fillLosses(speed_radps, torque_Nm, known_W);
  const filledCount = nodeCount - givenCount;
  if (filledCount > 0) {
    notes.push(
      `${filledCount} of ${nodeCount} nodes (no torque, no speed, gaps) filled by a four-term law fitted to the others`,
    );
  }
  return { speed_rpm, speed_radps, torque_Nm, loss_W, givenCount, filledCount, law, notes };
}

/** The map as the job file keeps a motor's loss. */
export function lossTableOf(map: MotorMap): MotorLoss {
  return {
    kind: "lossTable",
    speed_rpm: [...map.speed_rpm],
    torque_Nm: [...map.torque_Nm],
    loss_W: map.loss_W.map((row) => [...row]),
  };
}

/** What the values are, by the words beside them or, without words, by their size. */
function valueScale(name: string, { cells, values }: MapCells): { isLoss: boolean; scale: number; says: string } {
  const inside = cells.filter((cell) => cell.speed_rpm > 0 && cell.torque_Nm !== 0).map((cell) => cell.value);
  const most = inside.reduce((a, b) => Math.max(a, b), 0);
  if (values === "W" || values === "kW")
    return { isLoss: true, scale: values === "kW" ? W_PER_KW : 1, says: `losses read in ${values}` };
  if (values === undefined && most > 150)
    return {
      isLoss: true,
      scale: 1,
      says: "losses read in W: too large for percentages, and no word says what they are",
    };
  const isPercent = values === "percent" ? most > 1 : most > 2;
  if (isPercent) {
    const shares = inside.filter((value) => value > 0 && value < 1).length;
    if (shares > inside.length / 4) {
      throw inputError(
        "map-mixed",
        name,
        `found ${shares} of ${inside.length} values below 1 and others up to ${most}, wanted all as shares or all in percent`,
      );
    }
  }
  return {
    isLoss: false,
    scale: isPercent ? 0.01 : 1,
    says: `efficiencies read ${isPercent ? "in percent" : `as shares of 1${quiet(values)}`}`,
  };
}

function quiet(values: MapValues): string {
  return values === "percent" ? ", though a word says percent" : "";
}

function lossOfEfficiency(where: string, cell: MapCell, scale: number, problems: Problem[]): number | undefined {
  const { speed_rpm, torque_Nm } = cell;
  const share = cell.value * scale;
  if (share > 1 || share < 0) {
    const at = `${speed_rpm} rpm, ${torque_Nm} Nm`;
    problems.push({
      code: "map-efficiency",
      where,
      message: `found ${cell.value} at ${at}, an efficiency is 0 to ${1 / scale}`,
    });
    return undefined;
  }
  // nothing is said by an efficiency of nothing, at standstill or without torque
  if (speed_rpm <= 0 || torque_Nm === 0 || share === 0) return undefined;
  const shaft_W = Math.abs(torque_Nm) * speed_rpm * RADPS_PER_RPM;
  return torque_Nm > 0 ? shaft_W * (1 / share - 1) : shaft_W * (1 - share);
}

function lossGiven(where: string, cell: MapCell, scale: number, problems: Problem[]): number | undefined {
  const loss_W = cell.value * scale;
  if (loss_W < 0 || loss_W > 1e6) {
    problems.push({ code: "map-loss", where, message: `found ${cell.value}, a loss is 0 to ${1e6 / scale}` });
    return undefined;
  }
  return loss_W;
}

/** The distinct values, rising, those near each other taken as one; with 0 among them. */
function axis(
  name: string,
  what: keyof typeof most,
  unit: string,
  values: readonly number[],
  problems: Problem[],
): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const span = sorted.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (span > most[what]) {
    problems.push({
      code: "map-axis",
      where: name,
      message: `found a ${what} of ${span} ${unit}, at most ${most[what]} ${unit} wanted`,
    });
  }
  const nodes: number[] = [];
  for (const value of sorted) {
    const last = nodes[nodes.length - 1];
    if (last === undefined || value - last > nearby_frac * span) nodes.push(value);
  }
  const turning = nodes.filter((value) => value > 0).length;
  if (what === "speed" && (nodes[0] ?? 0) < 0) {
    problems.push({ code: "map-axis", where: name, message: `found a speed of ${nodes[0]} rpm, wanted 0 or more` });
  }
  if (turning < 2) {
    const found = turning === 0 ? "no" : "a single";
    problems.push({
      code: "map-axis",
      where: name,
      message: `found ${found} ${what} above 0 ${unit}, at least 2 wanted`,
    });
  }
  if (nodes.length >= mostNodes) {
    problems.push({
      code: "map-axis",
      where: name,
      message: `found ${nodes.length} ${what}s, fewer than ${mostNodes} wanted`,
    });
  }
  return nodes.includes(0) ? nodes : [...nodes, 0].sort((a, b) => a - b);
}

function nearest(nodes: readonly number[], value: number): number {
  let best = 0;
  nodes.forEach((node, i) => {
    if (Math.abs(node - value) < Math.abs((nodes[best] ?? 0) - value)) best = i;
  });
  return best;
}
