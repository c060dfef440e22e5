import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { gearName } from "../gears/oneGear.ts";
import { isUsed, type RecommendedLimit, STRONG_frac } from "./recommendLimit.ts";
import { shaftTorques } from "./shaftTorques.ts";
import type { TorqueRow } from "./torqueSweep.ts";

/** Full torque comes in over this long at least, so that no gear is struck. Common practice, no source. */
const RAMP_s = 0.5;
/** Less than this is felt by nobody. Assumed. */
const FELT_s = 0.1;
const FELT_frac = 0.02;

/** Which limit to set and why, what it costs the driver, and where it is still too much. */
export function torqueAdvice(
  job: Job,
  rows: readonly TorqueRow[],
  recommended: RecommendedLimit | undefined,
): Message[] {
  if (recommended === undefined)
    return [
      message`No limit can be recommended: neither the old engine's torque nor what gearbox or shafts stand has been entered.`,
    ];
  const { torque_Nm } = recommended;
  const words = [setWords(recommended), ...asSetWords(job, torque_Nm)];
  const row = rows.find((each) => each.torque_Nm === torque_Nm);
  const free = rows.at(-1);
  if (row && free && free.torque_Nm > torque_Nm) words.push(costWords(row, free));
  const engine_Nm = engineTorque_Nm(job);
  if (engine_Nm !== undefined)
    words.push(
      message`The old engine gave ${q("torque", engine_Nm)} at its best speed; the motor gives its torque from rest, so the gears see it at every start.`,
    );
  return [...words, ...shaftWords(job, torque_Nm), ...rampWords(job)];
}

function setWords({ torque_Nm, because, gear }: RecommendedLimit): Message {
  const set = message`Set the torque cap to ${q("torque", torque_Nm)} at the motor shaft`;
  if (because === "gearbox") return message`${set}: the gearbox input limit.`;
  if (because === "engine") return message`${set}: what the old engine gave, as the gearbox input limit is not known.`;
  if (because === "strong")
    return message`${set}: ${q("fraction", STRONG_frac, 2)} above what the old engine gave, which a strong gearbox takes; its own limit is higher.`;
  if (because === "motor")
    return message`No cap is needed: the motor's own peak, ${q("torque", torque_Nm)}, is within the limits.`;
  return message`${set}: more would put the ${because} over its limit in ${gear ? gearName(gear) : "the gear in use"}.`;
}

/** The cap as the job has it, where it is not the one recommended. */
function asSetWords({ controller, motor }: Job, torque_Nm: number): Message[] {
  const peak_Nm = peakTorque_Nm(motor.envelope);
  const set_Nm = Math.min(controller.torqueCap_Nm ?? peak_Nm, peak_Nm);
  if (set_Nm > torque_Nm + 1)
    return [message`It is not so now: the motor may give ${q("torque", set_Nm)}, which is more.`];
  if (set_Nm < torque_Nm - 1) return [message`It is set to ${q("torque", set_Nm)} now, which is within that.`];
  return [];
}

/** What a limit takes from the driver, against the motor left alone. */
function costWords(row: TorqueRow, free: TorqueRow): Message {
  const parts: Message[] = [];
  const slower = (to: Message, with_s: number | undefined, without_s: number | undefined) => {
    if (without_s === undefined) return;
    if (with_s === undefined) parts.push(message`${to} is no longer reached`);
    else if (with_s - without_s >= FELT_s)
      parts.push(message`${tenths(with_s)} instead of ${tenths(without_s)} to ${to}`);
  };
  slower(message`${q("speed", 50)}`, row.to50kmh_s, free.to50kmh_s);
  slower(message`${q("speed", 100)}`, row.to100kmh_s, free.to100kmh_s);
  if (row.behind_s - free.behind_s >= 1)
    parts.push(message`${q("duration", row.behind_s - free.behind_s, 2)} more behind on this road`);
  const shown = ({ steepestStart_ratio }: TorqueRow) => steepestStart_ratio.toPrecision(2);
  if (
    free.steepestStart_ratio - row.steepestStart_ratio > FELT_frac * free.steepestStart_ratio &&
    shown(row) !== shown(free)
  )
    parts.push(
      message`a start on ${q("gradient", row.steepestStart_ratio, 2)} instead of ${q("gradient", free.steepestStart_ratio, 2)} at most`,
    );
  const all = message`the motor's ${q("torque", free.torque_Nm)}`;
  if (parts.length === 0) return message`Against ${all} that costs the driver nothing that is felt.`;
  return message`Against ${all} that costs the driver ${parts.flatMap((part, i) => (i === 0 ? part : [", ", ...part]))}.`;
}

/** Seconds of a standing start, to a tenth. */
function tenths(value_s: number): Message {
  return message`${value_s.toFixed(1)} s`;
}

/** Gears in which the shafts take less than the limit: those in use first. */
function shaftWords(job: Job, torque_Nm: number): Message[] {
  const over = shaftTorques(job, torque_Nm).filter(
    ({ inputAtLimit_Nm }) => inputAtLimit_Nm !== undefined && inputAtLimit_Nm < torque_Nm,
  );
  return [...over.filter((row) => isUsed(job, row)), ...over.filter((row) => !isUsed(job, row))].map((row) => {
    const { inputAtLimit_Nm = 0, weakest, propellerShaft_Nm, halfShaft_Nm } = row;
    const carried_Nm = weakest === "propeller shaft" ? propellerShaft_Nm : halfShaft_Nm;
    const { propellerShaft_Nm: shaft_Nm = 0, halfShaft_Nm: half_Nm = 0 } = job.driveline.limits;
    const stands_Nm = weakest === "propeller shaft" ? shaft_Nm : half_Nm;
    const each = weakest === "half-shaft" ? "each half-shaft" : "the propeller shaft";
    return message`In ${gearName(row)} that puts ${q("torque", carried_Nm)} on ${each}, which takes ${q("torque", stands_Nm)}: there the motor may give ${q("torque", inputAtLimit_Nm, 2)} at most.`;
  });
}

function rampWords({ controller: { ramp_s } }: Job): Message[] {
  if (ramp_s >= RAMP_s) return [];
  return [
    message`Let full torque come in over ${q("duration", RAMP_s)} to ${q("duration", 1)}, now ${q("duration", ramp_s)}: gears break on shock, not on steady torque.`,
  ];
}
