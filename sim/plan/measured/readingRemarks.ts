import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { Model } from "../../step/model.ts";
import type { PackLog } from "../../trace/packLog.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import type { LinedUp } from "./lineUp.ts";
import type { PackSamples } from "./packSamples.ts";
import type { ZeroOffset } from "./zeroOffset.ts";

interface ReadLog {
  readonly log: PackLog;
  readonly linedUp: LinedUp;
  readonly zero: ZeroOffset;
  readonly samples: PackSamples;
  readonly model: Model;
  readonly drive: DrivenAsMeasured;
  readonly hasHeights: boolean;
  readonly start_frac: number;
}

const WHOLE_frac = 0.97;
const SPARSE_s = 2.5;
/** A car that draws or gives back more than this drives. Assumed: accessories and a heater aside. */
const WORKING_W = 5000;
/** Less working time than this outside the motion is clocks and ends. */
const UNSEEN_s = 30;
/** No two clocks with a date are further apart than time zones. */
const LONG_s = 86_400;
/** A logger that says nothing for longer has a gap. */
const GAP_s = 60;

/** How a log was read, a sentence each: clocks, sign, zero, intervals, gaps, heights, gears. */
export function readingRemarks({
  log,
  linedUp,
  zero,
  samples,
  model,
  drive,
  hasHeights,
  start_frac,
}: ReadLog): Message[] {
  const { offset_s, how, correlation, sign } = linedUp;
  const way = sign * log.fileSign > 0 ? "positive" : "negative";
  const moved =
    Math.abs(offset_s) < 0.3
      ? "The clocks of motion and pack agree"
      : Math.abs(offset_s) > LONG_s
        ? "The clock of volts and amps counts from its own start; it is laid on that of the motion"
        : `Volts and amps are moved by ${offset_s > 0 ? "+" : "-"}${secondsWords(Math.abs(offset_s))}`;
  const by = how === "given" ? "as given" : "so that power follows the motion best";
  return [
    message`${moved}, ${by} (correlation ${q("coefficient", correlation, 2)}).`,
    message`Amps written as ${way} leave the pack: the power they make rises when the car works.`,
    zeroWords(zero),
    message`The drive began with ${q("fraction", start_frac, 2)} of the charge${log.soc_frac ? ", as the log has it" : ", by its first volts"}.`,
    ...log.remarks.map((remark) => message`${remark}`),
    ...(samples.interval_s > SPARSE_s
      ? [
          message`Volts and amps come every ${q("duration", samples.interval_s, 2)}: each is compared with the prediction at its own moment, and the bands are wider for what lies between.`,
        ]
      : []),
    ...(samples.cover_frac < WHOLE_frac
      ? [
          message`Volts and amps cover ${q("fraction", samples.cover_frac, 2)} of the drive; the rest is left out of both sides.`,
        ]
      : []),
    ...unseenWords(log, samples),
    ...(hasHeights
      ? []
      : [message`The log has no heights: the road counts as level, and hills are in the differences.`]),
    ...gearWords(log, linedUp, model, drive),
  ];
}

/** That the pack worked where there is no motion: it was not logged, or its clock jumped and what did not fit was left out. */
function unseenWords({ time_s, voltage_V, current_A }: PackLog, samples: PackSamples): Message[] {
  let worked_s = 0;
  for (let i = 1; i < time_s.length; i++) {
    const step_s = time_s[i] - time_s[i - 1];
    if (step_s < GAP_s && Math.abs(voltage_V[i] * current_A[i]) > WORKING_W) worked_s += step_s;
  }
  let seen_s = 0;
  for (let k = 0; k < samples.count; k++) if (Math.abs(samples.power_W[k]) > WORKING_W) seen_s += samples.weight_s[k];
  const unseen_s = worked_s - seen_s;
  if (unseen_s < Math.max(UNSEEN_s, 0.1 * worked_s)) return [];
  return [
    message`The pack worked for ${q("duration", unseen_s, 2)} more without any motion beside it: motion was not logged then, or its clock jumped. Those times are left out of both sides.`,
  ];
}

/** From here on in minutes. */
const MINUTES_FROM_s = 90;

function secondsWords(seconds: number): string {
  if (Math.round(10 * seconds) < 10 * MINUTES_FROM_s) return `${seconds.toFixed(1)} s`;
  const whole = Math.round(seconds);
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return `${hours > 0 ? `${hours} h ` : ""}${minutes} min ${whole % 60} s`;
}

function zeroWords({ zero_A, how }: ZeroOffset): Message {
  switch (how) {
    case "off":
      return message`While the car stood switched off the amps showed ${q("current", zero_A, 2)}: taken out as the zero.`;
    case "charging":
      return message`While the car stood, charge seemed to flow into the pack: the zero is taken to be off by ${q("current", zero_A, 2)}, so that the accessories draw what the job has.`;
    case "unknown":
      return message`The zero of the amps is taken as it is: the car never stood switched off in this log.`;
  }
}

/** Motor speed over road speed, where the log has both, against the gears of the job. */
function gearWords(log: PackLog, { offset_s }: LinedUp, model: Model, drive: DrivenAsMeasured): Message[] {
  const { motor_radps } = log;
  if (!motor_radps) return [];
  const ratios: number[] = [];
  let row = 0;
  for (let i = 0; i < log.time_s.length; i++) {
    const at_s = log.time_s[i] + offset_s;
    while (row < drive.count - 1 && drive.time_s[row] < at_s) row++;
    const speed_mps = drive.target_mps[row];
    if (speed_mps > 15 * MPS_PER_KMH && Math.abs(motor_radps[i]) > 0 && Math.abs(drive.time_s[row] - at_s) < 1)
      ratios.push(Math.abs(motor_radps[i]) / speed_mps);
  }
  if (ratios.length < 30) return [];
  const isNear = (ratio: number) => model.gears.some(({ motor_radpm }) => Math.abs(ratio / motor_radpm - 1) < 0.06);
  const near_frac = ratios.filter(isNear).length / ratios.length;
  if (near_frac > 0.6) return [];
  ratios.sort((a, b) => a - b);
  const usual = ratios[ratios.length >> 1];
  const names = model.gears.map(({ name, motor_radpm }) => `${name} ${motor_radpm.toFixed(1)}`).join(", ");
  return [
    message`Motor speed over road speed is mostly ${usual.toFixed(1)} rad/s a m/s, and no gear the job uses has that (${names}): another gear was driven, or another final drive or tyre is fitted.`,
  ];
}
