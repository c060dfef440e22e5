import type { Job } from "../../../../shared/job/job.ts";
import { type Message, messageIn } from "../../../../shared/quantity/message.ts";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { preChargeShelf } from "../../../../sim/plan/currents/preChargeShelf.ts";
import type { Setting, SettingsBasis } from "../../../../sim/plan/settings/setting.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();

/**
 * Parts of the invented job that a test changes. As it is, 8 modules of 4 cells are 80 V at 2.5 V a cell and 116.8 V at 3.65 V, in one
 * string of 100 Ah that gives 200 A for hours and 400 A for 30 s, and takes 100 and 150 A.
 */
export interface BasisChanges {
  readonly controller?: Partial<Job["controller"]>;
  readonly motor?: Partial<Job["motor"]>;
  readonly module?: Partial<Job["module"]>;
  readonly pack?: Partial<Job["packs"][number]>;
  readonly charger?: Partial<Job["charger"]>;
  readonly accessories?: Partial<Job["accessories"]>;
  readonly driveline?: Partial<Job["driveline"]>;
  readonly supplies?: Job["supplies"];
  readonly charges?: SettingsBasis["charges"];
  /** Drawn beside the capacitors while they charge. */
  readonly load_W?: number;
  readonly fitted_ohm?: number;
}

/** The settings' basis of the invented job with changes, its road asking for 123 A. */
export function basisOf(changes: BasisChanges = {}): SettingsBasis {
  const { controller, motor, module, charger, accessories, driveline, supplies = [], charges = [] } = changes;
  const pack = { ...job.packs[0], ceiling_frac: 0.9, floor_frac: 0.1, ...changes.pack };
  const changed: Job = {
    ...job,
    controller: { ...job.controller, ...controller },
    motor: { ...job.motor, ...motor },
    module: { ...job.module, ...module },
    charger: { ...job.charger, ...charger },
    accessories: { ...job.accessories, ...accessories },
    driveline: { ...job.driveline, ...driveline },
    supplies,
    packs: [pack],
  };
  const model = preparePack(pack, changed.module);
  const { load_W, fitted_ohm } = changes;
  return {
    job: changed,
    pack,
    model,
    cells: 32,
    charges,
    currents: {
      greatest: [{ duration_s: 0, battery_A: 123, motor_Nm: 100 }],
      preCharge: preChargeShelf({ source_V: model.max_V, capacitance_uF: 2000, load_W, fitted_ohm, loadWakes_V: 60 }),
    },
  };
}

/** A setting of a list as its value, where it is from, and the caution beside it. */
export function rowOf(settings: readonly Setting[], key: string): [value: string, from: string, caution: string] {
  const found = settings.find((each) => each.key === key);
  if (!found) throw new Error(`no setting ${key}`);
  const said = (each: Message) => messageIn(each, "metric");
  return [said(found.value), said(found.from), said(found.caution ?? [])];
}
