import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { preparePack } from "../../battery/preparePack.ts";
import type { ChargePlan } from "../charging/chargePlan.ts";
import type { CurrentsPlan } from "../currents/currentsPlan.ts";
import { batterySettings, converterSettings } from "./batterySettings.ts";
import { chargerSettings } from "./chargerSettings.ts";
import { controllerDrive, regenLimits } from "./controllerDrive.ts";
import { controllerRegen } from "./controllerRegen.ts";
import { controllerVolts } from "./controllerVolts.ts";
import { IN_JOB, type Setting, type SettingsBasis, whyNoRegen } from "./setting.ts";
import { settingsCautions } from "./settingsCautions.ts";

/** The settings of one device. */
export interface SettingGroup {
  readonly where: "Controller" | "Charger" | "Battery management" | "DC-DC converter" | "Used by the prediction";
  readonly settings: readonly Setting[];
}

/** Every value to set when a car is commissioned with one of its packs. */
export interface SettingsSheet {
  readonly pack: string;
  readonly groups: readonly SettingGroup[];
  /** Before any of it is powered, in the order in which it is done. */
  readonly cautions: readonly Message[];
}

/** The settings of a job's pack, from its currents and its charges; `charging` is the plan of the same job. */
export function settingsSheet(
  job: Job,
  packIndex: number,
  currents: CurrentsPlan,
  charging: Pick<ChargePlan, "rows">,
): SettingsSheet {
  const pack = job.packs[packIndex];
  const model = preparePack(pack, job.module);
  const cells = Math.round(model.max_V / job.module.cellMax_V);
  const basis: SettingsBasis = { job, pack, model, cells, currents, charges: charging.rows[packIndex] ?? [] };
  return {
    pack: pack.name,
    groups: [
      {
        where: "Controller",
        settings: [...controllerVolts(basis), ...controllerDrive(basis), ...controllerRegen(basis)],
      },
      { where: "Charger", settings: chargerSettings(basis) },
      { where: "Battery management", settings: batterySettings(basis) },
      { where: "DC-DC converter", settings: converterSettings(basis) },
      { where: "Used by the prediction", settings: usedByPrediction(basis) },
    ],
    cautions: settingsCautions(model.max_V),
  };
}

/** Which of these the drives were made with, so that a log is compared with the same car. */
function usedByPrediction({ job, pack }: SettingsBasis): Setting[] {
  const { controller, motor, vehicle } = job;
  const used = (key: string, name: string, value: Message): Setting => ({ key, name, value, from: IN_JOB });
  return [
    used(
      "usedTorque",
      "Torque cap",
      controller.torqueCap_Nm === undefined ? message`none` : message`${q("torque", controller.torqueCap_Nm)}`,
    ),
    used("usedRegen", "Regen limit", whyNoRegen(job) ? message`regen off` : regenLimits(controller)),
    used("usedSpeed", "Motor speed limit", message`${q("rotation", motor.maxSpeed_rpm)}`),
    used(
      "usedWindow",
      "Usable window",
      message`${q("fraction", pack.floor_frac)} to ${q("fraction", pack.ceiling_frac)} of the tested capacity`,
    ),
    used("usedLoad", "People and luggage", message`${q("mass", vehicle.load_kg)}`),
  ];
}
