import type { MotorLoss } from "../../../shared/job/schema/motor.ts";
import { InputError, inputError, type Problem } from "../../../shared/problems.ts";
import { RADPS_PER_RPM } from "../../../shared/units.ts";
import { fillLosses } from "../../motor/fillLosses.ts";
import type { FourTermLaw } from "../../motor/loss.ts";
import { gridAxis, nearestNode } from "./mapGrid.ts";
import { lossGiven, lossOfEfficiency, valueScale } from "./mapLosses.ts";
import { readMotorMapCells } from "./readMotorMapCells.ts";

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

const mostProblems = 12;

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
  const speed_rpm = gridAxis(
    name,
    "speed",
    "rpm",
    read.cells.map((cell) => cell.speed_rpm),
    problems,
  );
  const torque_Nm = gridAxis(
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
    const i = nearestNode(speed_rpm, cell.speed_rpm);
    const j = nearestNode(torque_Nm, cell.torque_Nm);
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
