import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

const PATH = "driveline.transferBox";

/** The transfer box of a part-time four-wheel drive: ranges, front axle, hubs, and what its front shafts drag. */
export function transferBoxForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: PATH,
      name: "transfer box",
      without:
        "Two-wheel drive, or both axles always driven. Freewheeling hubs belong to a part-time four-wheel drive: they can be set once it has its transfer box.",
      start: transferStart,
    },
    () => html`
      ${form.fields(`${PATH}.range`, `${PATH}.isFrontEngaged`, `${PATH}.hubs`)}
      ${inWords(form.job)}
      ${form.fields(
        `${PATH}.high_ratio`,
        `${PATH}.low_ratio`,
        `${PATH}.highEfficiency_frac`,
        `${PATH}.lowEfficiency_frac`,
        `${PATH}.frontShaftDrag_Nm`,
        `${PATH}.frontEfficiency_frac`,
      )}
    `,
  );
}

/** A part-time box as they commonly are: common practice, no source; to be typed over. */
export function transferStart(): NonNullable<Job["driveline"]["transferBox"]> {
  return {
    high_ratio: 1,
    highEfficiency_frac: usualOf(`${PATH}.highEfficiency_frac`),
    low_ratio: 2.3,
    lowEfficiency_frac: usualOf(`${PATH}.lowEfficiency_frac`),
    range: "high",
    isFrontEngaged: false,
    hubs: "free",
    frontShaftDrag_Nm: usualOf(`${PATH}.frontShaftDrag_Nm`),
    frontEfficiency_frac: usualOf(`${PATH}.frontEfficiency_frac`),
  };
}

/** What the levers and the hubs, as they stand, do to the front wheels. */
function inWords({ driveline: { transferBox } }: Job): TemplateResult {
  if (!transferBox) return html``;
  const { isFrontEngaged, hubs, range } = transferBox;
  const front =
    isFrontEngaged && hubs === "free"
      ? "The front axle is engaged and its hubs are free: its shafts turn, but nothing reaches the front wheels. Lock the hubs to drive them."
      : isFrontEngaged
        ? "All four wheels drive, and all four brake by the motor."
        : hubs === "free"
          ? "The rear wheels drive; the front shafts stand still."
          : "The rear wheels drive; the front wheels turn their shafts and drag them along.";
  const low =
    range === "low"
      ? " In low range the motor's torque reaches the shafts multiplied: see under Torque limit what they carry."
      : "";
  return html`<p class="aside" id="transfer-box-in-words">${front}${low}</p>`;
}
