import { type FigureUnits, inUnit } from "../figure/figureUnits.ts";
import { threeFigures } from "../figure/threeFigures.ts";
import type { TorqueLine } from "./torqueLine.ts";

/** Torque as a figure shows it, in the reader's unit. */
export interface TorqueShown {
  /** Nm in the unit shown. */
  of(torque_Nm: number): number;
  format(torque_Nm: number): string;
  /** For a scale. */
  readonly label: string;
  /** For a table. */
  readonly column: { readonly name: string; readonly label: string };
  /** Where the points of a line lie over motor speed. */
  readonly place: { readonly x: "speed_rpm"; y(point: Pick<TorqueLine[number], "torque_Nm">): number };
}

/** How every figure with a scale of torque shows it. */
export function torqueShown({ torque: unit }: FigureUnits): TorqueShown {
  const of = (torque_Nm: number) => inUnit(unit, torque_Nm);
  const label = `Torque (${unit.sign})`;
  return {
    of,
    format: (torque_Nm) => `${threeFigures(of(torque_Nm))} ${unit.sign}`,
    label,
    column: { name: `torque_${unit.suffix}`, label },
    place: { x: "speed_rpm", y: (point) => of(point.torque_Nm) },
  };
}
