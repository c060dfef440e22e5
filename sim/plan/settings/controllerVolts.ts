import { message, quantity as q } from "../../../shared/quantity/message.ts";
import { BY_SHEET, IN_JOB, type Setting, type SettingsBasis, USUAL, volts, whyNoRegen } from "./setting.ts";

/** Where nothing is set: torque begins to fall this share of the span between the cells' limits above the lower. Common practice, no source. */
const ROLL_frac = 0.1;
/** Regen begins to fall this share of the full voltage below it: it overshoots on a full pack. Common practice, no source. */
const BELOW_FULL_frac = 0.03;

/** Voltages and battery currents of the controller. */
export function controllerVolts({ job, model, cells, currents }: SettingsBasis): Setting[] {
  const { controller, module } = job;
  const low_V = Math.max(controller.min_V, model.min_V);
  const high_V = Math.min(controller.max_V, model.max_V);
  const below_V = controller.rollBackBelow_V;
  const above_V = controller.rollBackAbove_V;
  const usualBelow_V = low_V + ROLL_frac * (high_V - low_V);
  const usualAbove_V = (1 - BELOW_FULL_frac) * high_V;
  const fitsBelow = below_V !== undefined && below_V > low_V && below_V < high_V;
  const fitsAbove = above_V !== undefined && above_V < high_V && above_V > low_V;
  const { regen, current_A } = controller;
  const off = whyNoRegen(job);
  const drive_A = Math.min(current_A ?? Number.POSITIVE_INFINITY, model.discharge.peak_A);
  const charge_A = Math.min(regen.current_A ?? Number.POSITIVE_INFINITY, model.charge.peak_A);
  return [
    {
      key: "lowestVolts",
      name: "Lowest pack voltage",
      value: volts(low_V),
      from:
        low_V === model.min_V
          ? message`${cells} cells at ${q("voltage", module.cellMin_V)}`
          : message`the controller's own, above the cells' ${q("voltage", model.min_V)}`,
    },
    {
      key: "torqueRollBack",
      name: "Torque falls from",
      value: message`${volts(fitsBelow ? below_V : usualBelow_V)}, none at ${volts(low_V)}`,
      from: fitsBelow
        ? IN_JOB
        : below_V === undefined
          ? message`a tenth of the span above the lowest: ${USUAL}`
          : message`the job's ${q("voltage", below_V)} lies outside this pack; a tenth of the span: ${USUAL}`,
    },
    {
      key: "highestVolts",
      name: "Highest pack voltage",
      value: volts(high_V),
      from:
        high_V === model.max_V
          ? message`${cells} cells at ${q("voltage", module.cellMax_V)}`
          : message`the controller's own, below the full pack's ${q("voltage", model.max_V)}`,
      ...(model.max_V > controller.max_V && {
        caution: message`This pack destroys the controller when full: do not connect it.`,
      }),
    },
    {
      key: "regenRollBack",
      name: "Regen falls from",
      value: message`${volts(fitsAbove ? above_V : usualAbove_V)}, none at ${volts(high_V)}`,
      from: fitsAbove
        ? IN_JOB
        : above_V === undefined
          ? message`3 % below full: ${USUAL}`
          : message`the job's ${q("voltage", above_V)} lies outside this pack; 3 % below full: ${USUAL}`,
      caution: message`With a full pack there is no braking by the motor: the brakes alone must do.`,
    },
    {
      key: "batteryDrive",
      name: "Battery current, driving",
      value: message`${q("current", drive_A)} for ${module.discharge.peak_s} s, ${q("current", Math.min(drive_A, model.discharge.continuous_A))} for hours`,
      from:
        current_A !== undefined && current_A <= model.discharge.peak_A
          ? message`in the job; the pack gives ${q("current", model.discharge.peak_A)}`
          : message`the most that this pack gives; the road asks for ${q("current", currents.greatest[0].battery_A, 2)}`,
      ...(current_A !== undefined &&
        current_A > model.discharge.peak_A && {
          caution: message`The controller's own ${q("current", current_A)} is more than the cells stand.`,
        }),
    },
    {
      key: "batteryRegen",
      name: "Battery current, regen",
      value: off
        ? message`none: regen is off`
        : message`${q("current", charge_A)} for ${module.charge.peak_s} s, ${q("current", Math.min(charge_A, model.charge.continuous_A))} for hours; none at ${q("temperature", module.coldCharge.none_degC)} and below`,
      from:
        off ??
        (regen.current_A !== undefined && regen.current_A <= model.charge.peak_A
          ? message`in the job; the pack takes ${q("current", model.charge.peak_A)}`
          : message`the most that this pack takes`),
    },
    {
      key: "controllerTemperature",
      name: "Controller temperature roll-back",
      value: message`by its sheet`,
      from: BY_SHEET,
    },
  ];
}
