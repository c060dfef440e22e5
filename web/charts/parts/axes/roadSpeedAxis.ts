import { axisX, type Markish } from "@observablehq/plot";
import { ticks as roundTicks } from "d3-array";
import { type FigureUnits, fromUnit, inUnit } from "../figure/figureUnits.ts";
import { threeFigures } from "../figure/threeFigures.ts";

/** Road speed at one motor turn a minute in a gear. */
export interface GearForScale {
  readonly name: string;
  readonly speedPerRpm_mps: number;
}

/** A second scale above a figure over motor speed: round road speeds in one gear. */
export function roadSpeedAxis(gear: GearForScale, most_rpm: number, units: FigureUnits, ticks: number): Markish {
  const shown = (rpm: number) => inUnit(units.speed, rpm * gear.speedPerRpm_mps);
  const at = roundTicks(0, shown(most_rpm), ticks).map((speed) => fromUnit(units.speed, speed) / gear.speedPerRpm_mps);
  return axisX(at, {
    anchor: "top",
    label: `Road speed in ${gear.name} (${units.speed.sign})`,
    labelArrow: "none",
    labelOffset: 38,
    tickSize: 4,
    tickFormat: (rpm: number) => threeFigures(shown(rpm)),
  });
}
