import type { Job } from "../../../shared/job/job.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { W_PER_KW } from "../../../shared/units.ts";
import type { Candidate } from "../driveReport.ts";
import { cautionsAt } from "./cautions.ts";
import { type ChargeFromEmpty, chargesFromEmpty, suppliesOf } from "./chargeFromEmpty.ts";
import { type ChargeRow, chargeRow, type RowJob } from "./chargeRow.ts";
import { chargerFeed } from "./chargerFeed.ts";
import { pilotDuty_frac } from "./pilot.ts";

/** One place to charge, whatever the pack. */
export interface SupplyFacts {
  readonly name: string;
  /** Most that the charger takes from the wall there. */
  readonly wall_kW: number;
  /** Most that it gives to car and pack. */
  readonly given_kW: number;
  /** What a meter shows of the control pilot; nothing in mode 1 and for currents that it cannot tell. */
  readonly pilotDuty_frac?: number;
}

/** Every pack of a job at every place where it is charged. */
export interface ChargePlan {
  /** No supply is in the job: a usual household socket stands in for it. */
  readonly isAssumed: boolean;
  readonly supplies: readonly SupplyFacts[];
  /** By pack in the order of the job, then by supply. */
  readonly rows: readonly (readonly ChargeRow[])[];
  readonly notes: readonly Message[];
  readonly cautions: readonly Message[];
}

/** What of a job its charging hangs on. */
export type PlanJob = RowJob & Pick<Job, "packs" | "supplies" | "units" | "conditions">;

/**
 * Hours, energy and cost of charging each pack of a job at each of its supplies. `candidates` are the drives of its packs;
 * `fromEmpty` is what of it no drive changes.
 */
export function chargePlan(
  job: PlanJob,
  candidates: readonly Candidate[],
  fromEmpty: readonly (readonly ChargeFromEmpty[])[] = chargesFromEmpty(job),
): ChargePlan {
  const isAssumed = job.supplies.length === 0;
  const supplies = suppliesOf(job);
  const rows = fromEmpty.map((charges, i) => charges.map((charge) => chargeRow(job, charge, candidates[i])));
  const longest_h = (k: number) => Math.max(...rows.map((each) => each[k].emptyToFull?.time_h ?? 0));
  return {
    isAssumed,
    supplies: supplies.map((supply) => factsOf(supply, job)),
    rows,
    notes: notesOn(job, isAssumed),
    cautions: supplies.flatMap((supply, k) => cautionsAt(supply, longest_h(k))),
  };
}

function factsOf(supply: Supply, { charger }: PlanJob): SupplyFacts {
  const { power_W, wall_W } = chargerFeed(supply, charger);
  const duty_frac = supply.mode === "mode1" ? undefined : pilotDuty_frac(supply.current_A);
  return {
    name: supply.name,
    wall_kW: wall_W(power_W) / W_PER_KW,
    given_kW: power_W / W_PER_KW,
    ...(duty_frac !== undefined && { pilotDuty_frac: duty_frac }),
  };
}

function notesOn({ charger, module, supplies, conditions }: PlanJob, isAssumed: boolean): Message[] {
  const { none_degC, full_degC } = module.coldCharge;
  const winter_degC = conditions?.winter?.temperature_degC ?? Number.POSITIVE_INFINITY;
  return [
    ...(isAssumed ? [message`No supply is entered: a household socket at a usual current stands in for it.`] : []),
    ...(charger.power_kW === undefined
      ? [message`The charger’s power is not entered: the supply alone sets the pace.`]
      : []),
    ...(supplies.some(({ kind }) => kind === "threePhase") && charger.isThreePhase !== true
      ? [message`The charger takes one phase: a third of a three-phase supply.`]
      : []),
    message`These cells take no charge at or below ${q("temperature", none_degC)} and all of it from ${q("temperature", full_degC)}: a cold pack charges late or not at all.`,
    ...(winter_degC <= none_degC
      ? [
          message`On a winter’s day of ${q("temperature", winter_degC)} they take none once they have cooled: plug in on coming home, while they are warm from the drive, keep them warm, or do not count on that night. Hours in winter are for cells that are warm enough.`,
        ]
      : []),
    message`Evening out the cells at the top can add up to an hour now and then (common practice, no source); it is not in these hours.`,
  ];
}
