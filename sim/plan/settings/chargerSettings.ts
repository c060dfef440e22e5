import { message, quantity as q } from "../../../shared/quantity/message.ts";
import { C_PER_AH } from "../../../shared/units.ts";
import { lookUp } from "../../math/uniformTable.ts";
import { IN_JOB, type Setting, type SettingsBasis, USUAL } from "./setting.ts";

/** Where the charger has no end current: a twentieth of the capacity in ampere-hours. Common practice, no source. */
const TAIL_ratio = 1 / 20;
/** The charger gives up after so many times what a whole charge takes. Common practice, no source. */
const TIMEOUT_ratio = 1.25;

/** The charger. */
export function chargerSettings({ job, pack, model, cells, charges }: SettingsBasis): Setting[] {
  const { charger, module, supplies } = job;
  const rests_V = lookUp(model.openCircuit_V, pack.ceiling_frac);
  const most_A = Math.min(charger.maxDc_A ?? Number.POSITIVE_INFINITY, model.charge.continuous_A);
  const tail_A = charger.tail_A ?? (model.capacity_C / C_PER_AH) * TAIL_ratio;
  return [
    {
      key: "chargerCells",
      name: "Cells in series",
      value: message`${cells} cells`,
      from: message`${pack.seriesModules} modules of ${module.seriesCells}`,
      caution: message`One too many overcharges every cell: count them at the pack.`,
    },
    {
      key: "bulkVolts",
      name: "Bulk voltage",
      value: message`${q("voltage", model.max_V)} at most; ${q("fraction", pack.ceiling_frac)} rests at ${q("voltage", rests_V)}`,
      from: message`${cells} cells at ${q("voltage", module.cellMax_V)}; the cells' open-circuit curve`,
      ...(charger.max_V !== undefined &&
        charger.max_V < model.max_V && {
          caution: message`The charger ends at ${q("voltage", charger.max_V)}: this pack is never charged full.`,
        }),
    },
    {
      key: "chargeCurrent",
      name: "Current into the pack",
      value: message`${q("current", most_A)} at most`,
      from: most_A === charger.maxDc_A ? message`the charger's own` : message`what the cells take for hours`,
    },
    {
      key: "taperEnd",
      name: "Taper ends at",
      value: message`${q("current", tail_A)}`,
      from: charger.tail_A === undefined ? message`a twentieth of the capacity: ${USUAL}` : IN_JOB,
    },
    ...mains(supplies, charges),
    {
      key: "chargeTimeout",
      name: "Time-out",
      value: timeout(charges),
      from: message`a quarter more than the longest whole charge: ${USUAL}`,
    },
    {
      key: "chargeCold",
      name: "Temperature floor",
      value: message`no charge at ${q("temperature", module.coldCharge.none_degC)} and below, in full from ${q("temperature", module.coldCharge.full_degC)}`,
      from: message`the module's sheet, or 0 and 10 degrees Celsius: ${USUAL}`,
      caution: message`Charged cold, lithium plates: the cell may short later without a warning.`,
    },
    {
      key: "driveOff",
      name: "Drive-off lock",
      value: message`no drive while the lead is in`,
      from: message`proximity contact of the inlet: ${USUAL}`,
    },
  ];
}

function mains(supplies: SettingsBasis["job"]["supplies"], charges: SettingsBasis["charges"]): Setting[] {
  if (supplies.length === 0)
    return [
      {
        key: "mains",
        name: "Mains current",
        value: message`${q("current", 10)} at a household socket`,
        from: message`no place is in the job: ${USUAL}`,
        caution: message`Household sockets are not made for hours at full current. A licensed electrician looks at the supply.`,
      },
    ];
  return supplies.map(({ name, kind, current_A }, k) => ({
    key: `mains${k + 1}`,
    name: `Mains current, ${name}`,
    value: message`${q("current", current_A)}${charges[k]?.stop ? "; not charged there" : ""}`,
    from: IN_JOB,
    caution:
      kind === "household"
        ? message`A household socket heats in hours: feel the plug, 10 A or less unless it is known for better. A licensed electrician looks at it.`
        : message`Circuit, protection and earth by a licensed electrician under the local code.`,
  }));
}

function timeout(charges: SettingsBasis["charges"]) {
  const hours = charges.flatMap(({ emptyToFull }) => emptyToFull?.time_h ?? []);
  if (hours.length === 0) return message`not known: it is charged nowhere`;
  return message`${Math.ceil(TIMEOUT_ratio * Math.max(...hours))} h`;
}
