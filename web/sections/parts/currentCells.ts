import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import type { CurrentsPlan } from "../../../sim/index.ts";

type Point = CurrentsPlan["greatest"][number];

/** The table of currents by duration, road beside hill. */
export function durationCells({ road, hill, hasMotorCurrent }: CurrentsPlan, units: UnitHabit): string[][] {
  const row = (over: string, onRoad: Point, onHill: Point) => [
    over,
    ...[onRoad, onHill].map(({ battery_A }) => writeQuantity("current", battery_A, units, 2)),
    ...[onRoad, onHill].map(({ motor_Nm }) => writeQuantity("torque", motor_Nm, units, 2)),
    ...(hasMotorCurrent ? [onRoad, onHill].map(({ motor_A = 0 }) => writeQuantity("current", motor_A, units, 2)) : []),
  ];
  return [
    ...road.points.map((point, i) => row(lasting(point.duration_s), point, hill.points[i] ?? point)),
    row("all of it", road.whole, hill.whole),
  ];
}

/** The table of pre-charge resistors. */
export function shelfCells({ rows, chosen, isFitted }: CurrentsPlan["preCharge"], units: UnitHabit): string[][] {
  const all =
    isFitted && chosen && rows.every((row) => row.resistance_ohm !== chosen.resistance_ohm) ? [chosen, ...rows] : rows;
  return all.map((row) => [
    writeQuantity("resistor", row.resistance_ohm, units),
    writeQuantity("fraction", row.settles_frac, units, 2),
    row.time_s === undefined ? "never" : `${Number(row.time_s.toPrecision(2))} s`,
    `${Number(row.energy_J.toPrecision(2))} J`,
    writeQuantity("accessoryPower", row.peak_W, units, 2),
    writeQuantity("accessoryPower", row.rating_W, units),
    row.resistance_ohm === chosen?.resistance_ohm ? (isFitted ? "as fitted" : "begin with this") : "",
  ]);
}

function lasting(duration_s: number): string {
  if (duration_s === 0) return "peak";
  return duration_s < 120 ? `${duration_s} s` : `${duration_s / 60} min`;
}
