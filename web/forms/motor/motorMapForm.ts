import { html, nothing, type TemplateResult } from "lit-html";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { writeField } from "../../editing/fieldTable/writeAtPath.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import type { BroughtMap } from "../../fields/staging.ts";
import { bringMap } from "./bringMap.ts";
import { takeMap } from "./takeMotor.ts";

const ID = "motor-map";

/** Bringing a motor's map from a file: how it was understood, or what is wrong with it, and a button that takes it. */
export function motorMapForm(form: Form): TemplateResult {
  const { map } = form.view.staging;
  const bring = async (file: File | undefined) => {
    if (file) map.value = await bringMap(file);
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    event.stopPropagation(); // a file dropped elsewhere on the page is a job
    bring(event.dataTransfer?.files[0]);
  };
  const picked = (event: Event) => {
    const input = event.target as HTMLInputElement;
    bring(input.files?.[0]);
    input.value = ""; // the same file, mended, can be chosen again
  };
  const brought = map.value;
  return html`<div class="dropped-on" @drop=${dropped} @dragover=${(event: DragEvent) => event.preventDefault()}>
    <p>
      Efficiency or loss of motor and controller, as comma-separated values: speed down and torque across, the other way
      round, or a line for each point. Percent or shares, watts or kilowatts; gaps are filled. Drop the file here, or
    </p>
    <p class="buttons">
      <span class="file">
        <input id=${ID} type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" @change=${picked} />
        <label for=${ID}>Choose the map's file</label>
      </span>
    </p>
    <div role="status">${brought ? outcome(form, brought) : nothing}</div>
    ${refusal(form, ID)}
  </div>`;
}

function outcome(form: Form, brought: BroughtMap): TemplateResult {
  const { map } = form.view.staging;
  const putBack = () => {
    map.value = undefined;
  };
  if ("problems" in brought) {
    return html`<div class="offer is-refused">
      <p class="to-mend">${brought.name} could not be read as a motor map; the job is as it was.</p>
      <ul class="heed">${brought.problems.map((each) => html`<li>${each}.</li>`)}</ul>
      <p class="buttons"><button type="button" @click=${putBack}>Discard</button></p>
    </div>`;
  }
  const take = () => {
    const done = attempt(form, ID, "Map of the motor", (state) => takeMap(state, brought));
    if (done) putBack();
  };
  return html`<div class="offer">
    <p>${brought.name} was understood like this:</p>
    <ul>${notesOn(form, brought).map((note) => html`<li>${note}.</li>`)}</ul>
    <p>It is drawn below, and changes nothing until it is taken.</p>
    <p class="buttons">
      <button type="button" @click=${take}>Take it as the motor's losses</button>
      <button type="button" @click=${putBack}>Discard</button>
    </p>
  </div>`;
}

function notesOn(form: Form, { map }: Extract<BroughtMap, { map: unknown }>): string[] {
  const units = form.view.units.value;
  const { motor } = form.job;
  const top_rpm = map.speed_rpm[map.speed_rpm.length - 1];
  const top_Nm = map.torque_Nm[map.torque_Nm.length - 1];
  const torque = (value_Nm: number) => writeField("motor.envelope.torque_Nm", value_Nm, units);
  const speed = (value_rpm: number) => writeField("motor.maxSpeed_rpm", value_rpm, units);
  const peak_Nm = peakTorque_Nm(motor.envelope);
  const notes = [
    `${map.speed_rpm.length} speeds up to ${speed(top_rpm)} and ${map.torque_Nm.length} torques up to ${torque(top_Nm)}, no speed and no torque among them`,
    ...map.notes,
  ];
  if (top_Nm < 0.9 * peak_Nm || top_rpm < 0.9 * motor.maxSpeed_rpm) {
    notes.push(
      `the motor goes up to ${torque(peak_Nm)} and ${speed(motor.maxSpeed_rpm)}: beyond the map its outermost values are carried on, which is a guess`,
    );
  }
  return notes;
}
