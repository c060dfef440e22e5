import { engineTorque_Nm } from "../../shared/job/engineTorque.ts";
import { messageIn } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { notStarting } from "../../sim/index.ts";
import { torqueCurve } from "../charts/torqueCurve.ts";
import { oldEngineLine } from "../sections/parts/oldEngine.ts";
import { torqueAsSet } from "../sections/parts/torqueAsSet.ts";
import { defineChapter } from "./parts/chapter.ts";

/** Does the old gearbox stand the motor's torque? */
export default defineChapter({
  name: "gearboxTakesIt",
  title: "Will the gearbox take it",
  working: "torqueLimit",
  given: (form) => form.fields("controller.torqueCap_Nm", "requirement.startHill_ratio"),
  inputs: ["job", "motorSurface", "gearbox", "units"],
  compute: ({ job, motorSurface, gearbox, units }) => {
    const curves = torqueAsSet(motorSurface);
    const most_Nm = Math.max(...curves.asSet.map(({ torque_Nm }) => torque_Nm));
    const format = (torque_Nm: number) => writeQuantity("torque", torque_Nm, units);
    const { gearboxInput_Nm: limit_Nm } = job.driveline.limits;
    const engine_Nm = engineTorque_Nm(job);
    const { hill } = gearbox;
    return {
      most: format(most_Nm),
      limit: limit_Nm === undefined ? undefined : format(limit_Nm),
      isOver: limit_Nm !== undefined && most_Nm > limit_Nm,
      old: engine_Nm === undefined ? undefined : format(engine_Nm),
      isOverOld: engine_Nm !== undefined && most_Nm > engine_Nm,
      ramp_s: job.controller.ramp_s,
      curves,
      limit_Nm,
      engine: oldEngineLine(job),
      // That it does not start on its hill comes before all else; after the torque, which gear to live in.
      cannot: hill && notStarting(job, hill.verdict) && messageIn(hill.words[0], units),
      advice: messageIn(gearbox.gearAdvice.head, units),
    };
  },
  sentence: ({ cannot, advice, ...found }) =>
    cannot
      ? `${cannot} ${torqueWords(found, "The gearbox takes the torque")} ${advice}`
      : `${torqueWords(found, "Yes")} ${advice}`,
  plot: ({ curves, limit_Nm, engine }, drawing) => ({
    caption: "Does the gearbox take the motor's torque? Torque at its input over motor speed",
    chart: torqueCurve(
      { ...curves, ...(limit_Nm !== undefined && { gearboxInput_Nm: limit_Nm }), ...(engine && { engine }) },
      drawing,
    ),
  }),
});

interface Found {
  readonly most: string;
  readonly limit: string | undefined;
  readonly isOver: boolean;
  readonly old: string | undefined;
  readonly isOverOld: boolean;
  readonly ramp_s: number;
}

/** Whether it takes the torque, as far as anybody knows; where it does, that begins with `yes`. */
function torqueWords({ most, limit, isOver, old, isOverOld, ramp_s }: Found, yes: string): string {
  const ramp = ramp_s > 0 ? ` The controller brings it in over ${ramp_s} s.` : "";
  if (limit !== undefined) {
    if (isOver)
      return `No: the motor gives up to ${most}, and the gearbox input limit is ${limit}. Set the controller to ${limit} or less.`;
    const than = old === undefined ? "" : ` The old engine gave ${old}.`;
    return `${yes}: the motor gives up to ${most}; the gearbox input limit is ${limit}.${than}${ramp}`;
  }
  if (old === undefined)
    return "Not known: neither the gearbox input limit nor the old engine’s torque has been entered.";
  if (isOverOld)
    return `Not sure: the motor gives up to ${most}, more than the old engine’s ${old}, and the gearbox input limit is not known.`;
  return `Likely: the motor gives up to ${most}, no more than the old engine’s ${old}; the gearbox input limit itself is not known.${ramp}`;
}
