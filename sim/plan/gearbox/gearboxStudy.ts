import type { Job } from "../../../shared/job/job.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import type { Trace } from "../../trace/trace.ts";
import { type Changing, changing, changingWords } from "../gears/changing.ts";
import { type DriveState, fourWheelDrive, hubWords } from "../gears/fourWheelDrive.ts";
import { demandOf, type GearDemand, type GearRow, gearTable } from "../gears/gearTable.ts";
import { type HoodState, hoodStates, hoodWords } from "../gears/hoodStates.ts";
import { type GearAdvice, recommendGear } from "../gears/recommendGear.ts";
import { type Pace, paceOf } from "../going/pace.ts";
import { type HeatStudy, heatStudy } from "../heat/heatStudy.ts";
import { heatFaults, heatWords } from "../heat/heatWords.ts";
import { type AskedHill, hillAsked } from "../hills/hillAsked.ts";
import { hillWords } from "../hills/hillWords.ts";
import { type HillVerdict, judgeHill } from "../hills/judgeHill.ts";
import { regenAdvice } from "../regen/regenAdvice.ts";
import { type RegenRow, regenSweep, usualLimits_Nm } from "../regen/regenSweep.ts";
import { type RecommendedLimit, recommendLimit } from "../torqueLimit/recommendLimit.ts";
import { type ShaftTorques, shaftTorques } from "../torqueLimit/shaftTorques.ts";
import { torqueAdvice } from "../torqueLimit/torqueAdvice.ts";
import { type TorqueRow, torqueSweep, usualCaps_Nm } from "../torqueLimit/torqueSweep.ts";
import { type Tried, torquesToCompare } from "../torqueLimit/torquesToCompare.ts";

/** What the old gearbox, axle and tyres make of the motor with one pack on one road: the commands `gears`, `torque`, `hills` and `regen` in one. */
export interface GearboxStudy {
  readonly pack: string;
  readonly demand: GearDemand;
  readonly gears: readonly GearRow[];
  readonly gearAdvice: GearAdvice;
  /** Changing as the job sets it, and against the gear recommended; absent where the car is left in one gear. */
  readonly changing?: Changing & { readonly words?: Message };
  /** How levers and hubs may stand; empty without a part-time transfer box. */
  readonly driveStates: readonly DriveState[];
  readonly hubWords?: Message;
  /** Hood up and down; empty where no hood is known. */
  readonly hoodStates: readonly HoodState[];
  readonly hoodWords?: Message;
  /** Standing starts and top speed, beside the old engine's. */
  readonly pace: Pace;
  readonly caps: readonly TorqueRow[];
  readonly recommendedCap?: RecommendedLimit;
  readonly capWords: readonly Message[];
  /** What shafts carry by gear, for the torques worth comparing. */
  readonly shafts: readonly (Tried & { readonly gears: readonly ShaftTorques[] })[];
  /** Absent where no hill is asked for and the road is level. */
  readonly hill?: { readonly asked: AskedHill; readonly verdict: HillVerdict; readonly words: readonly Message[] };
  /** Motor and pack on a hot day: what was driven, in sentences, and what is at fault. */
  readonly heat: { readonly study: HeatStudy; readonly words: readonly Message[]; readonly faults: readonly Message[] };
  readonly regen: readonly RegenRow[];
  /** Torque of the setting to begin with; absent where none is free of faults. */
  readonly regenBegin_Nm?: number;
  readonly regenWords: readonly Message[];
}

/** All of it: some dozens of drives. */
export function gearboxStudy(job: Job, packIndex: number, trace: Trace): GearboxStudy {
  const asked = hillAsked(job.requirement, trace);
  const demand = demandOf(trace, job.requirement);
  const gears = gearTable(job, packIndex, trace, demand);
  const gearAdvice = recommendGear(gears, demand);
  const changed = changing(job, packIndex, trace);
  const changedWords = changed && changingWords(changed, gearAdvice.recommended);
  const driveStates = fourWheelDrive(job, packIndex, trace);
  const hubs = hubWords(driveStates);
  const hoods = hoodStates(job, packIndex, trace);
  const hood = hoodWords(hoods);
  const recommendedCap = recommendLimit(job);
  const caps = torqueSweep(job, packIndex, trace, usualCaps_Nm(job), demand.hill_ratio);
  const verdict = asked && judgeHill(job, packIndex, asked);
  const heat = heatStudy(job, packIndex, trace);
  const regen = regenSweep(job, packIndex, trace, usualLimits_Nm(job));
  const { recommended, words } = regenAdvice(regen);
  return {
    pack: job.packs[packIndex].name,
    demand,
    gears,
    gearAdvice,
    ...(changed && { changing: { ...changed, ...(changedWords && { words: changedWords }) } }),
    driveStates,
    ...(hubs && { hubWords: hubs }),
    hoodStates: hoods,
    ...(hood && { hoodWords: hood }),
    pace: paceOf(job, packIndex),
    caps,
    ...(recommendedCap && { recommendedCap }),
    capWords: torqueAdvice(job, caps, recommendedCap),
    shafts: torquesToCompare(job, recommendedCap).map((tried) => ({
      ...tried,
      gears: shaftTorques(job, tried.torque_Nm),
    })),
    ...(asked && verdict && { hill: { asked, verdict, words: hillWords(job, asked, verdict) } }),
    heat: { study: heat, words: heatWords(job, heat), faults: heatFaults(job, heat) },
    regen,
    ...(recommended && { regenBegin_Nm: recommended.torque_Nm }),
    regenWords: words,
  };
}
