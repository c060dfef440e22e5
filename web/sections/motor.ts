import { html } from "lit-html";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { lossMap } from "../charts/lossMap.ts";
import { torqueCurve } from "../charts/torqueCurve.ts";
import { draftsBelow } from "../fields/draftsBelow.ts";
import { datasheetForm } from "../forms/motor/datasheetForm.ts";
import { engineForm } from "../forms/motor/engineForm.ts";
import { motorForm, motorPicker } from "../forms/motor/motorForm.ts";
import { motorMapForm } from "../forms/motor/motorMapForm.ts";
import { oldEngineLine, oldEngineWords } from "./parts/oldEngine.ts";
import { defineSection } from "./parts/section.ts";
import { torqueAsSet } from "./parts/torqueAsSet.ts";

/** What does the motor give, beside the engine that came out? */
export default defineSection({
  name: "motor",
  title: "Motor",
  question: "What does the motor give, and how does that compare with the engine that came out?",
  given: (form) => {
    const peak = form.job.motor.envelope.kind === "peak" ? ["torque_Nm", "power_kW"] : [];
    const first = ["name", ...peak.map((key) => `envelope.${key}`), "maxSpeed_rpm", "reference_V"];
    const firstFields = first.map((key) => `motor.${key}`);
    return html`
      ${form.fields(...firstFields)}
      ${motorPicker(form)}
      ${form.fold("The engine that came out", engineForm(form), "engine")}
      ${form.fold("More about the motor", motorForm(form), ...draftsBelow(form, "motor", firstFields))}
      ${form.fold("A map of its efficiency or losses, from a file", motorMapForm(form))}
      ${form.fold("Datasheet figures", datasheetForm(form))}
    `;
  },
  fields: ["motor", "engine"],
  explains: ["motor_Nm", "motorLoss_W"],
  inputs: ["job", "motorSurface", "broughtMap", "units"],
  compute: ({ job, motorSurface, broughtMap, units }) => {
    const driving = motorSurface.envelope.filter(({ torque_Nm }) => torque_Nm >= 0);
    const format = (kind: "torque" | "rotation", value: number) => writeQuantity(kind, value, units);
    const peak_Nm = Math.max(...driving.map(({ torque_Nm }) => torque_Nm));
    const last = driving.findLast(({ torque_Nm }) => torque_Nm >= 0.995 * peak_Nm);
    const most_Nm = Math.min(peak_Nm, job.controller.torqueCap_Nm ?? Number.POSITIVE_INFINITY);
    const box_Nm = job.driveline.limits.gearboxInput_Nm;
    return {
      asSet: torqueAsSet(motorSurface).asSet,
      box_Nm,
      name: job.motor.name,
      driving,
      engine: oldEngineLine(job),
      brought: broughtMap,
      torque: format("torque", peak_Nm),
      upTo: format("rotation", last?.speed_rpm ?? 0),
      top: format("rotation", job.motor.maxSpeed_rpm),
      old: oldEngineWords(job, units),
      map: job.motor.loss.kind === "lossTable" ? job.motor.loss : undefined,
      isSwapped: peak_Nm > job.motor.maxSpeed_rpm,
      tooMuch:
        box_Nm !== undefined && most_Nm > box_Nm ? [format("torque", most_Nm), format("torque", box_Nm)] : undefined,
    };
  },
  plot: ({ name, driving, asSet, box_Nm, engine, brought, map }, drawing) => {
    const limit = box_Nm === undefined ? {} : { gearboxInput_Nm: box_Nm };
    const curve = torqueCurve({ motor: driving, asSet, ...limit, ...(engine && { engine }) }, drawing);
    const caption = "Does the gearbox take the motor's torque? Torque at the gearbox input over motor speed";
    const figures = [{ name: "torque", caption, chart: curve }];
    if (!brought || !("map" in brought)) {
      if (!map) return figures;
      const chart = lossMap({ ...map, name: "the job's map", envelope: driving }, drawing);
      return [
        ...figures,
        {
          name: "losses",
          caption: `What does the motor lose? ${name} with its controller, by the map in the job`,
          chart,
        },
      ];
    }
    const { speed_rpm, torque_Nm, loss_W } = brought.map;
    const chart = lossMap({ name: brought.name, speed_rpm, torque_Nm, loss_W, envelope: driving }, drawing);
    return [
      ...figures,
      {
        name: "lossesBrought",
        caption: `What would the motor lose by ${brought.name}? A map not taken into the job yet`,
        chart,
      },
    ];
  },
  sentence: ({ torque, upTo, top, old }) =>
    `At the nominal voltage of the pack the motor gives ${torque} from rest up to ${upTo}, and turns up to ${top}. ${old}`,
  summary: ({ torque, upTo, top }) => `${torque} up to ${upTo}, turns up to ${top}`,
  attention: ({ tooMuch, isSwapped, torque, top }) => {
    const swapped = `${torque} and ${top}: torque and speed are likely changed over.`;
    const cap = `The motor may put ${tooMuch?.[0]} into a gearbox that stands ${tooMuch?.[1]}: set the controller's torque cap to that or less.`;
    return [...(isSwapped ? [swapped] : []), ...(tooMuch ? [cap] : [])];
  },
});
