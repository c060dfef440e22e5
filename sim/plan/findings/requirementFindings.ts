import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { sineOf } from "../../math/slope.ts";
import type { Model } from "../../step/model.ts";
import type { Finding } from "../driveReport.ts";
import { holdSpeed } from "../going/holdSpeed.ts";
import { startTorque } from "../going/startTorque.ts";
import { note, warning } from "./finding.ts";

/** Torque that a start on the steepest hill should leave over. Common practice, no source. */
export const SPARE_frac = 0.2;

/** Whether the car does what the client asks beside the day's distance: starts on his hill, reaches his top speed. */
export function requirementFindings({ requirement }: Pick<Job, "requirement">, model: Model): Finding[] {
  const { startHill_ratio, topSpeed_kmh } = requirement;
  return [
    ...(startHill_ratio === undefined ? [] : [hillStart(model, startHill_ratio)]),
    ...(topSpeed_kmh === undefined ? [] : [topSpeed(model, topSpeed_kmh)]),
  ];
}

/** The start on a hill in the best of the gears that are used. */
function hillStart(model: Model, grade_ratio: number): Finding {
  const sinSlope = sineOf(grade_ratio);
  const starts = model.gears.map((gear) => startTorque(model, gear, sinSlope));
  const spare_frac = (i: number) => starts[i].available_Nm / starts[i].needed_Nm - 1;
  const best = starts.reduce((most, _, i) => (spare_frac(i) > spare_frac(most) ? i : most), 0);
  const { gear, needed_Nm, available_Nm } = starts[best];
  const hill = q("gradient", grade_ratio, 3);
  const torque = message`needs ${q("torque", needed_Nm)}, has ${q("torque", available_Nm)}`;
  if (available_Nm < needed_Nm)
    return warning("hillTooSteep", message`The car does not start on ${hill} in ${gear}: ${torque}.`);
  if (spare_frac(best) < SPARE_frac)
    return warning(
      "hillOnlyJust",
      message`The car only just starts on ${hill} in ${gear}: ${torque}, and a fifth to spare is wanted.`,
    );
  return note("hillStarts", message`The car starts on ${hill} in ${gear}: ${torque}.`);
}

/** The top speed in the fastest of the gears that are used, held on a level road until the pack is empty. */
function topSpeed(model: Model, speed_kmh: number): Finding {
  const asked = q("speed", speed_kmh);
  const fastest = model.gears.reduce((best, gear) => (gear.top_mps > best.top_mps ? gear : best));
  const ending = (why: Message) => warning("tooSlow", why);
  if (fastest.top_mps < speed_kmh * MPS_PER_KMH) {
    const top = q("speed", fastest.top_mps / MPS_PER_KMH);
    return ending(message`The car does not reach ${asked}: in ${fastest.name} the motor turns no faster at ${top}.`);
  }
  const { isHeld, held_s } = holdSpeed(model, speed_kmh * MPS_PER_KMH);
  if (isHeld) return note("topSpeedHeld", message`The car holds ${asked} on the level.`);
  if (held_s < 60) return ending(message`The car does not hold ${asked} on the level.`);
  return ending(message`The car holds ${asked} on the level for ${Math.floor(held_s / 60)} minutes, not longer.`);
}
