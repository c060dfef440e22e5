import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { withGroup } from "../../editing/groupEdits.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { kindChoice } from "../../fields/kindChoice.ts";

const PATH = "motor.envelope";

type Envelope = Job["motor"]["envelope"];
type Points = Extract<Envelope, { kind: "points" }>;

/** How the motor's peak torque is known: by its peak torque and power, or point by point over its speed. */
export function envelopeChoice(form: Form): TemplateResult {
  return kindChoice(
    form,
    PATH,
    "Its peak torque is known as",
    [
      { key: "peak", words: "a peak torque and a peak power", make: ({ motor }) => asPeak(motor.envelope) },
      { key: "points", words: "points over its speed", make: ({ motor }) => asPoints(motor) },
    ],
    form.job.motor.envelope.kind,
  );
}

/** The points of peak torque over speed, with buttons to add one and take one out. */
export function envelopePoints(form: Form): TemplateResult {
  const { envelope, maxSpeed_rpm } = form.job.motor;
  if (envelope.kind === "peak") return html``;
  const { speed_rpm, torque_Nm } = envelope;
  const put = (what: string, next: Points) => attempt(form, PATH, what, (state) => withGroup(state, PATH, next));
  const add = () => {
    const last_rpm = speed_rpm[speed_rpm.length - 1];
    const next_rpm = maxSpeed_rpm > last_rpm ? maxSpeed_rpm : last_rpm + 500;
    const next_Nm = torque_Nm[torque_Nm.length - 1];
    put("A point more", { kind: "points", speed_rpm: [...speed_rpm, next_rpm], torque_Nm: [...torque_Nm, next_Nm] });
  };
  const remove = (i: number) =>
    put("A point less", { kind: "points", speed_rpm: speed_rpm.toSpliced(i, 1), torque_Nm: torque_Nm.toSpliced(i, 1) });
  return html`${speed_rpm.map((speed, i) =>
    form.fields(
      form.field(`${PATH}.speed_rpm.${i}`),
      form.field(`${PATH}.torque_Nm.${i}`),
      speed_rpm.length > 2
        ? html`<p class="buttons">
            <button type="button" @click=${() => remove(i)}>Remove<span class="unseen"> the point at ${speed} rpm</span></button>
          </p>`
        : html``,
    ),
  )}
  <p class="buttons"><button type="button" @click=${add}>Add a point</button></p>
  ${refusal(form, PATH)}`;
}

function asPeak(envelope: Envelope): Envelope {
  if (envelope.kind === "peak") return envelope;
  const { speed_rpm, torque_Nm } = envelope;
  const powers_kW = torque_Nm.map((torque, i) => (torque * speed_rpm[i] * RADPS_PER_RPM) / W_PER_KW);
  return { kind: "peak", torque_Nm: Math.max(...torque_Nm), power_kW: tidy(Math.max(...powers_kW)) };
}

/** Points where the torque turns and on the way down from there: constant torque, then constant power. */
function asPoints({ envelope, maxSpeed_rpm }: Job["motor"]): Envelope {
  if (envelope.kind === "points") return envelope;
  const base_rpm = (envelope.power_kW * W_PER_KW) / envelope.torque_Nm / RADPS_PER_RPM;
  if (base_rpm >= maxSpeed_rpm) {
    return { kind: "points", speed_rpm: [0, maxSpeed_rpm], torque_Nm: [envelope.torque_Nm, envelope.torque_Nm] };
  }
  const steps = [0, 0.25, 0.5, 0.75, 1].map((part) => base_rpm + part * (maxSpeed_rpm - base_rpm));
  return {
    kind: "points",
    speed_rpm: [0, ...steps.map(tidy)],
    torque_Nm: [envelope.torque_Nm, ...steps.map((speed) => tidy((envelope.torque_Nm * base_rpm) / speed))],
  };
}

function tidy(value: number): number {
  return Number(value.toPrecision(4));
}
