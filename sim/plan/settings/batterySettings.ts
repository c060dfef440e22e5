import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { C_PER_AH, W_PER_KW } from "../../../shared/units.ts";
import { IN_JOB, type Setting, type SettingsBasis, USUAL } from "./setting.ts";

/** Warned so far inside the cells' limits, and balanced from so far below full. Common practice, no source. */
const WARN_HIGH_V = 0.05;
const WARN_LOW_V = 0.2;
const BALANCE_V = 0.1;
const BALANCE_LFP_V = 0.15;
const MV_PER_V = 1000;
const DELTA_V = 0.01;
const names: Readonly<Record<SettingsBasis["job"]["module"]["chemistry"], string>> = {
  nickel: "nickel (manganese, cobalt), lithium ion",
  ironPhosphate: "iron phosphate, lithium ion",
};

/** Battery management. */
export function batterySettings({ job, pack, model, cells }: SettingsBasis): Setting[] {
  const { module } = job;
  const { cellMin_V, cellMax_V, chemistry, coldCharge, heat, condition } = module;
  const volt = (value_V: number) => q("voltage", value_V);
  const balance_V = cellMax_V - (chemistry === "ironPhosphate" ? BALANCE_LFP_V : BALANCE_V);
  const strings = pack.whole ? 1 : pack.parallelModules;
  return [
    {
      key: "cells",
      name: "Cells",
      value: message`${cells} in series${strings > 1 ? `, ${strings} strings` : ""}; ${names[chemistry]}`,
      from: IN_JOB,
      caution: message`Check the order of the sense leads by warming one cell: crossed leads burn.`,
    },
    {
      key: "cellCuts",
      name: "Cell voltage, cuts",
      value: message`${volt(cellMin_V)} and ${volt(cellMax_V)}`,
      from: message`in the job, the cells' sheet`,
    },
    {
      key: "cellWarnings",
      name: "Cell voltage, warnings",
      value: message`${volt(cellMin_V + WARN_LOW_V)} and ${volt(cellMax_V - WARN_HIGH_V)}`,
      from: USUAL,
    },
    {
      key: "balance",
      name: "Balancing",
      value: message`from ${volt(balance_V)}, down to ${MV_PER_V * DELTA_V} mV between cells`,
      from: USUAL,
    },
    {
      key: "cellTemperatures",
      name: "Cell temperatures",
      value: heat
        ? message`no charge at ${q("temperature", coldCharge.none_degC)}; less current from ${q("temperature", heat.derateFrom_degC)}, none at ${q("temperature", heat.derateTo_degC)}`
        : message`no charge at ${q("temperature", coldCharge.none_degC)}; hot limits by the cells' sheet`,
      from: IN_JOB,
    },
    {
      key: "currentSensor",
      name: "Current sensor",
      value: message`positive when the pack gives; zero set with the contactors open`,
      from: USUAL,
    },
    {
      key: "capacity",
      name: "Capacity entered",
      value: message`${q("charge", model.capacity_C / C_PER_AH)}`,
      from:
        condition === "reclaimed"
          ? message`as tested, the weakest module's; never the label's`
          : message`in the job: test it before it is entered`,
    },
    {
      key: "socReset",
      name: "State of charge is set",
      value: message`to full when voltage and end current are both reached, never in mid-charge${chemistry === "ironPhosphate" ? ": the curve is flat there" : ""}`,
      from: USUAL,
    },
  ];
}

/** The DC-DC converter. */
export function converterSettings({ job, model, currents }: SettingsBasis): Setting[] {
  const { standing_W, items } = job.accessories;
  const all_W = items
    .filter(({ supply }) => supply === "12V")
    .reduce((sum_W, { power_W }) => sum_W + power_W, standing_W);
  const size: Message = message`${q("electricPower", all_W / W_PER_KW, 2)} with everything on`;
  return [
    {
      key: "converterVolts",
      name: "Output",
      value: message`13.8 to 14.2 V; ${size}`,
      from: message`${USUAL}; the job's 12 V loads together`,
      caution: message`A car with positive earth: change that first.`,
    },
    {
      key: "converterCut",
      name: "Cut-off of the pack",
      value: message`${q("voltage", Math.max(model.min_V, job.controller.min_V))}`,
      from: message`the lowest pack voltage above`,
    },
    {
      key: "converterEnabled",
      name: "Enabled",
      value: message`once the main contactor is closed, and while it charges; never during pre-charge`,
      from: USUAL,
      ...(currents.preCharge.load_W > 0 &&
        currents.preCharge.chosen === undefined && {
          caution: message`As it is wired it keeps the capacitors from charging: see the currents.`,
        }),
    },
  ];
}
