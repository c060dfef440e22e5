import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { packLayout } from "../../sections/parts/packLayout.ts";

/** A table or a list of the job, told in short. */
export interface ToldGroup {
  readonly label: string;
  /** Nothing where the job does not have it. */
  readonly format: (job: Job, units: UnitHabit, packIndex: number) => string | undefined;
}

const list = (values: readonly number[]) => values.map((value) => formatNumber(value)).join(", ");

/** What is no single number, by its path. */
export const toldGroups: Readonly<Record<string, ToldGroup>> = {
  road: { label: "The road", format: (job) => drivenRoad(job).title },
  "environment.gravity_mps2": {
    label: "Gravity",
    format: ({ environment }) => `${formatNumber(environment.gravity_mps2)} m/s²`,
  },
  "pack.layout": {
    label: "Modules in series and in parallel",
    format: ({ packs, module }, _, packIndex) =>
      `${packLayout(packs[packIndex])}, of ${module.seriesCells} × ${module.parallelCells} cells each`,
  },
  "driveline.gears.*.gear_ratio": {
    label: "Ratios of the gears",
    format: ({ driveline }) => list(driveline.gears.map(({ gear_ratio }) => gear_ratio)),
  },
  "driveline.gears.*.efficiency_frac": {
    label: "Efficiencies of the gears",
    format: ({ driveline }) => list(driveline.gears.map(({ efficiency_frac }) => efficiency_frac)),
  },
  "module.openCircuit": {
    label: "Voltage at rest, of the pack",
    format: ({ module, packs }, units, packIndex) => {
      const { cell_V } = module.openCircuit;
      const inSeries = module.seriesCells * packs[packIndex].seriesModules;
      const [empty, full] = [Math.min(...cell_V), Math.max(...cell_V)];
      const volts = (value_V: number) => writeQuantity("voltage", value_V, units);
      return `from ${volts(empty * inSeries)} empty to ${volts(full * inSeries)} full, ${inSeries} cells of ${volts(empty)} to ${volts(full)} in series`;
    },
  },
  "module.resistance": {
    label: "Resistance of a module",
    format: ({ module: { resistance } }, units) => {
      const [first, last] = [Math.min(...resistance.module_mohm), Math.max(...resistance.module_mohm)];
      const ohms = (value_mohm: number) => writeQuantity("resistance", value_mohm, units);
      return `${ohms(first)} to ${ohms(last)}, by charge, at ${writeQuantity("temperature", 25, units)}`;
    },
  },
  "module.resistanceByTemperature": {
    label: "Its resistance by temperature",
    format: ({ module: { resistanceByTemperature } }, units) => {
      const { temperature_degC, resistance_ratio } = resistanceByTemperature;
      const last = temperature_degC.length - 1;
      const at = (i: number) =>
        `${formatNumber(resistance_ratio[i])} times at ${writeQuantity("temperature", temperature_degC[i], units)}`;
      return `${at(0)} to ${at(last)}`;
    },
  },
  "motor.loss": {
    label: "Losses of motor and controller",
    format: ({ motor: { loss } }) => {
      if (loss.kind === "flat") return `one efficiency, ${formatNumber(loss.efficiency_frac)}, everywhere`;
      if (loss.kind === "fourTerm") {
        const { copper_coeff, iron_coeff, windage_coeff, constant_W } = loss;
        return `copper ${formatNumber(copper_coeff)}, iron ${formatNumber(iron_coeff)}, windage ${formatNumber(windage_coeff)}, and ${formatNumber(constant_W)} W`;
      }
      return `a table of ${loss.speed_rpm.length} speeds by ${loss.torque_Nm.length} torques`;
    },
  },
  "motor.envelope": {
    label: "Peak torque and power of the motor",
    format: ({ motor: { envelope } }, units) => {
      if (envelope.kind === "peak")
        return `${writeQuantity("torque", envelope.torque_Nm, units)} and ${writeQuantity("power", envelope.power_kW, units)}`;
      const peak = writeQuantity("torque", peakTorque_Nm(envelope), units);
      return `${peak} at most, a curve of ${envelope.speed_rpm.length} points`;
    },
  },
  "accessories.items": {
    label: "What is switched on beside it",
    format: ({ accessories: { items } }) => {
      const on = items.filter(({ power_W, duty_frac }) => power_W * duty_frac > 0);
      const each = on.map(
        ({ name, power_W, duty_frac }) =>
          `${name} ${formatNumber(power_W)} W for ${formatNumber(100 * duty_frac)} % of the drive`,
      );
      return each.length === 0 ? "nothing" : each.join(", ");
    },
  },
};
