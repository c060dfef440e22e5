import { html, type TemplateResult } from "lit-html";
import type { TorqueCurve } from "../../../shared/job/engineRatings.ts";
import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { knownEngine } from "../../../sim/index.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { torqueTable } from "./torqueTable.ts";

const PATH = "engine.curve";
const figures = ["ratedTorque_Nm", "torque_rpm", "ratedPower_kW", "power_rpm", "idle_rpm", "limit_rpm"];

/** What is known of the engine that came out: the figures of its handbook, and its torque curve where there is one. */
export function engineForm(form: Form): TemplateResult {
  return html`${form.fields(...figures.map((key) => `engine.${key}`))}
  ${optionalGroup(
    form,
    {
      path: PATH,
      name: "torque curve",
      without:
        "Its curve is drawn through the figures above, by common practice. Where a printed or measured one is at hand, it can be typed or pasted; it needs none of them.",
      start: (job) => ({ ...startingCurve(job) }),
    },
    () =>
      torqueTable(form, {
        path: PATH,
        caption: "Torque at full throttle over the engine's speed, speeds rising.",
        most: 200,
      }),
  )}`;
}

/**
 * A few points to type over: of the curve that is drawn while none is typed, or, where too little is known for one, of a small engine:
 * invented, its best torque between its ends.
 */
export function startingCurve(job: Job): TorqueCurve {
  const { engine } = knownEngine(job.engine);
  if (!engine) {
    const best_Nm = engineTorque_Nm(job) ?? 100;
    const best_rpm = job.engine?.torque_rpm ?? 2500;
    const speed_rpm = [0.4, 1, 1.8].map((share) => Math.round(share * best_rpm));
    return { speed_rpm, torque_Nm: [0.8 * best_Nm, best_Nm, 0.8 * best_Nm].map(tidy) };
  }
  const { rating, curve } = engine;
  const all_rpm = curve.speed_rpm;
  const kept_rpm = [...new Set([all_rpm[0], rating.torque_rpm, rating.power_rpm, all_rpm[all_rpm.length - 1]])];
  return {
    speed_rpm: kept_rpm.map(tidy),
    torque_Nm: kept_rpm.map((speed) => tidy(curve.torque_Nm[all_rpm.indexOf(speed)])),
  };
}

/** Four figures: nothing of a drawn curve is known better. */
function tidy(value: number): number {
  return Number(value.toPrecision(4));
}
