import { html, type TemplateResult } from "lit-html";
import { motors } from "../../../shared/parts/motors.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";
import { partPicker } from "../parts/partPicker.ts";
import { envelopeChoice, envelopePoints } from "./envelopeForm.ts";
import { lossForm } from "./lossForm.ts";

/** A generic motor to start from, with its controller's losses. */
export function motorPicker(form: Form): TemplateResult {
  return partPicker(form, {
    id: "motor",
    label: "A generic motor to start from",
    parts: motors,
    path: "motor",
    caution: ({ data }) => voltageCaution(form, data),
  });
}

/** Everything of the motor that a first answer does without. */
export function motorForm(form: Form): TemplateResult {
  const { envelope } = form.job.motor;
  return html`
    ${envelopeChoice(form)} ${envelope.kind === "points" ? envelopePoints(form) : ""}
    ${form.fields(
      "motor.kind",
      "motor.origin",
      "motor.mass_kg",
      "motor.rotorInertia_kgm2",
      "motor.rollBack_rpm",
      "motor.canRegenerate",
    )}
    <fieldset class="group"><legend>Losses</legend>${lossForm(form)}</fieldset>
    ${optionalGroup(
      form,
      {
        path: "motor.heat",
        name: "heat limit",
        without: "Its heat is left out: it gives its peak without a limit in time.",
        start: ({ motor }) => ({
          capacity_kJpK: Number((0.45 * motor.mass_kg).toPrecision(3)), // of a kilogram of iron and copper: common practice
          cooling_WpK: Number((0.4 * motor.mass_kg).toPrecision(2)), // as the generic motors of this list: invented
          derateFrom_degC: usualOf("motor.heat.derateFrom_degC"),
          derateTo_degC: usualOf("motor.heat.derateTo_degC"),
        }),
      },
      () =>
        form.fields(
          "motor.heat.capacity_kJpK",
          "motor.heat.cooling_WpK",
          "motor.heat.derateFrom_degC",
          "motor.heat.derateTo_degC",
        ),
    )}
    ${optionalGroup(
      form,
      {
        path: "motor.rating",
        name: "maker's rating",
        without: "Hills are judged by its heat alone.",
        // A third of the peak: common practice, no source.
        start: ({ motor: { envelope } }) => ({
          continuous_kW: envelope.kind === "peak" ? Number((envelope.power_kW / 3).toPrecision(2)) : 10,
        }),
      },
      () => form.fields("motor.rating.continuous_kW", "motor.rating.peak_kW", "motor.rating.peak_s"),
    )}
  `;
}

/** A motor whose voltage the controller does not reach, or goes far beyond, is another job. */
function voltageCaution(form: Form, data: unknown): string | undefined {
  const reference_V =
    typeof data === "object" && data !== null && "reference_V" in data ? Number(data.reference_V) : Number.NaN;
  const { min_V, max_V } = form.job.controller;
  return reference_V > max_V || reference_V < min_V
    ? `Its figures hold at ${reference_V} V, and the controller here works from ${min_V} to ${max_V} V: controller and packs must follow.`
    : undefined;
}
