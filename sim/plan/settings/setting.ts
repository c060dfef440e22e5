import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { PackModel } from "../../battery/packModel.ts";
import type { ChargeRow } from "../charging/chargeRow.ts";
import type { CurrentsPlan } from "../currents/currentsPlan.ts";

/** One value to set, where it comes from, and what it can do. */
export interface Setting {
  /** Stable, for programs: `torqueCap`. */
  readonly key: string;
  readonly name: string;
  readonly value: Message;
  /** In the job, from the cells, from the runs, or usual in the trade. */
  readonly from: Message;
  /** Beside what can hurt or break something. */
  readonly caution?: Message;
}

/** All that settings are derived from. */
export interface SettingsBasis {
  readonly job: Job;
  readonly pack: Pack;
  /** The pack in SI, as it was driven. */
  readonly model: PackModel;
  /** Cells one after the other. */
  readonly cells: number;
  readonly currents: Pick<CurrentsPlan, "greatest" | "preCharge">;
  /** Its charges, place by place. */
  readonly charges: readonly Pick<ChargeRow, "stop" | "emptyToFull">[];
}

export const USUAL = message`common practice, no source`;
export const BY_SHEET = message`not in the job: by the maker's sheet`;
export const IN_JOB = message`in the job`;

/** Why the motor does not brake: it cannot, or the job has it off; nothing where it does. */
export function whyNoRegen({ controller, motor }: Pick<Job, "controller" | "motor">): Message | undefined {
  if (!motor.canRegenerate) return message`this motor cannot`;
  return controller.regen.isOn ? undefined : IN_JOB;
}

/** A voltage to the tenth below a hundred, whole above. */
export function volts(value_V: number): Message {
  return message`${q("voltage", value_V)}`;
}
