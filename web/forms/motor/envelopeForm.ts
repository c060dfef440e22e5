import type { TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { kindChoice } from "../../fields/kindChoice.ts";
import { torqueTable } from "./torqueTable.ts";

const PATH = "motor.envelope";

type Envelope = Job["motor"]["envelope"];

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

/** The points of peak torque over speed, a row each. */
export function envelopePoints(form: Form): TemplateResult {
  return torqueTable(form, { path: PATH, caption: "Peak torque over the motor's speed, speeds rising.", most: 2000 });
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
