import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { fitDatasheet } from "../../../sim/index.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { kindChoice } from "../../fields/kindChoice.ts";
import { usualOf } from "../../fields/optionalGroup.ts";

const PATH = "motor.loss";

/** How the losses of motor and controller are known, and the figures of that way. */
export function lossForm(form: Form): TemplateResult {
  const { loss } = form.job.motor;
  return html`${kindChoice(
    form,
    PATH,
    "Losses of motor and controller are known as",
    [
      {
        key: "fourTerm",
        words: "losses by formula",
        make: ({ motor }) => ({ kind: "fourTerm", ...usualLaw(motor) }),
      },
      {
        key: "flat",
        words: "one efficiency for everything",
        make: () => ({ kind: "flat", efficiency_frac: usualOf(`${PATH}.efficiency_frac`) }),
      },
      { key: "lossTable", words: "a map of losses (bring its file below)" },
      { key: "efficiencyMap", words: "a map of efficiencies (bring its file below)" },
    ],
    loss.kind,
  )}
  ${loss.kind === "flat" ? form.fields(`${PATH}.efficiency_frac`) : ""}
  ${loss.kind === "fourTerm" ? form.fields(...["copper_coeff", "iron_coeff", "windage_coeff", "constant_W"].map((key) => `${PATH}.${key}`)) : ""}
  ${
    loss.kind === "lossTable" || loss.kind === "efficiencyMap"
      ? html`<p class="aside">
          The job holds a map of ${loss.speed_rpm.length} speeds by ${loss.torque_Nm.length} torques, up to
          ${Math.round(loss.speed_rpm[loss.speed_rpm.length - 1])} rpm and
          ${Math.round(loss.torque_Nm[loss.torque_Nm.length - 1])} Nm.
        </p>`
      : ""
  }`;
}

/** The generic losses of a motor of this kind and size, as a datasheet without a single efficiency would give them. */
function usualLaw({ kind, envelope, maxSpeed_rpm, reference_V }: Job["motor"]) {
  const most_Nm = peakTorque_Nm(envelope);
  const most_kW = (most_Nm * maxSpeed_rpm * RADPS_PER_RPM) / W_PER_KW;
  const peak_kW =
    envelope.kind === "peak"
      ? Math.min(envelope.power_kW, most_kW)
      : Math.max(...envelope.torque_Nm.map((torque, i) => (torque * envelope.speed_rpm[i] * RADPS_PER_RPM) / W_PER_KW));
  const { law } = fitDatasheet({
    kind,
    peakTorque_Nm: most_Nm,
    peakPower_kW: peak_kW,
    continuousPower_kW: peak_kW / 2, // peak is 2 to 3 times continuous: common practice, no source
    topSpeed_rpm: maxSpeed_rpm,
    rated_V: reference_V,
    points: [],
  });
  return Object.fromEntries(Object.entries(law).map(([key, value]) => [key, Number(value.toPrecision(4))]));
}
