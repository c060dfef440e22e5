import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { roadQuantity } from "../../fields/roadField.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { problemWords } from "../../log/logText.ts";
import type { MeasuredDrive } from "../../worker/roads/measuredApi.ts";

const ID = "measured-log";
const AS_IT_IS = "job";

/** Bringing the built car's log, what it is compared with, and taking what it corrects into the job. */
export function measuredForm(form: Form): TemplateResult {
  const { measured } = form.view.staging;
  const { job } = form;
  const offset = roadQuantity(form, {
    id: "measured-offset",
    label: "By",
    kind: "duration",
    usual: "",
    min: 0,
    max: 1e6,
    mayBeEmpty: true,
  });
  const socket = roadQuantity(form, {
    id: "measured-socket",
    label: "Counted at the socket, for a log of charging",
    kind: "energy",
    usual: "",
    min: 0.05,
    max: 1000,
    mayBeEmpty: true,
  });
  const years = roadQuantity(form, {
    id: "measured-years",
    label: "Years since the build, for the pack’s age",
    kind: "number",
    usual: "",
    unit: "years",
    min: 0,
    max: 40,
    mayBeEmpty: true,
  });
  const last = job.predictions.length - 1;
  const against = measured.against.value ?? (last >= 0 ? last : AS_IT_IS);
  const packIndex = form.view.packIndex.value ?? builtPack(job);
  const hold = (files?: readonly File[]) =>
    measured.hold(
      {
        job,
        packIndex,
        prediction: against === AS_IT_IS ? undefined : against,
        offset_s:
          offset.value === undefined ? undefined : measured.way.value === "behind" ? offset.value : -offset.value,
        socket_kWh: socket.value,
        years: years.value,
      },
      files,
    );
  const dropped = (event: DragEvent) => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    if (files.length === 0 || files.some(({ name }) => /\.json$/i.test(name))) return;
    event.preventDefault();
    event.stopPropagation();
    void hold(files);
  };
  const picked = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const files = Array.from(input.files ?? []);
    if (files.length > 0) void hold(files);
    input.value = ""; // the same file, mended, can be chosen again
  };
  const choices = [
    ...job.predictions.map(({ at, note }, i) => ({
      key: String(i),
      words: `the prediction of ${at.slice(0, 10)}${note === undefined ? "" : `, ${note}`}`,
    })),
    { key: AS_IT_IS, words: "the job as it is" },
  ];
  const packs = job.packs.map(({ name }, i) => ({ key: String(i), words: name }));
  return html`${form.fields(
    viewChoice("measured-pack", "Pack that was built in", packs, String(packIndex), (key) => {
      form.view.packIndex.value = Number(key);
    }),
    viewChoice("measured-against", "Compare with", choices, String(against), (key) => {
      measured.against.value = key === AS_IT_IS ? AS_IT_IS : Number(key);
    }),
  )}
    <div class="dropped-on road-log" @drop=${dropped} @dragover=${(event: DragEvent) => event.preventDefault()}>
      <p>
        <strong>The built car’s own log.</strong> Drop what was logged on the client’s road: the pack’s volts and amps with the car’s
        speed, in one table or in two (a receiver’s and a battery logger’s; their clocks may differ). Or
      </p>
      <p class="buttons">
        <span class="file">
          <input id=${ID} type="file" multiple accept=".gpx,.tcx,.kml,.nmea,.csv,.tsv,.txt,.log,.xml" @change=${picked} />
          <label for=${ID}>Choose the built car’s log</label>
        </span>
      </p>
      ${form.fold(
        "Clocks, the meter at the socket, and the car’s age",
        form.fields(
          viewChoice(
            "measured-way",
            "The clock of volts and amps is",
            [
              { key: "behind", words: "behind that of the motion" },
              { key: "ahead", words: "ahead of that of the motion" },
            ],
            measured.way.value,
            (key) => {
              measured.way.value = key === "ahead" ? "ahead" : "behind";
            },
          ),
          offset.field,
          socket.field,
          years.field,
        ),
      )}
      ${progress(form)}
      <div role="status">${refused(form)}${measured.done.value === "" ? nothing : html`<p>${measured.done.value}</p>`}</div>
      ${
        measured.files.value.length === 0
          ? nothing
          : html`<p class="buttons">
              <button type="button" @click=${() => hold()}>Compare with the job again</button>
              ${takeButton(form)}
              <button type="button" @click=${measured.putBack}>Discard the built car’s log</button>
            </p>`
      }
    </div>`;
}

/** The pack that the newest prediction spoke for, else the middle one of the list. */
function builtPack({ packs, predictions }: Job): number {
  const spokenOf = predictions[predictions.length - 1]?.recommended;
  const index = packs.findIndex(({ name }) => name === spokenOf);
  return index >= 0 ? index : Math.floor((packs.length - 1) / 2);
}

function takeButton(form: Form): TemplateResult | typeof nothing {
  const outcome = form.view.staging.measured.outcome.value;
  if (outcome?.kind !== "drive" || outcome.correctedCount === 0) return nothing;
  return html`<button type="button" @click=${() => take(form, outcome)}>Take the corrected values into the job</button>`;
}

/** The corrected line takes the job's place, one step that can be taken back; a frozen prediction stays as it was. */
function take(form: Form, { corrected, day }: MeasuredDrive): void {
  const { measured } = form.view.staging;
  if (form.job.predictions.length === 0) {
    measured.refused.value = [
      "The job holds no frozen prediction yet: freeze one first, so that what was promised stays beside what the log corrects",
    ];
    return;
  }
  const problems = form.jobEditor.change("Corrected by the log", (state) => ({
    ...state,
    job: { ...state.job, ...corrected },
  }));
  measured.refused.value = problems.map(problemWords);
  if (problems.length === 0)
    measured.done.value = `The job is now as the log corrects it${day === undefined ? "" : `, dated ${day}`}; the frozen prediction stays as it was. Undo takes it back.`;
}

function progress(form: Form): TemplateResult | typeof nothing {
  const { work, cancel } = form.view.staging.measured;
  if (!work.value) return nothing;
  const { words, share_frac } = work.value;
  const percent = Math.floor(100 * share_frac);
  return html`<div class="log-work">
    <p id="measured-work-words">${words}: ${percent} %</p>
    <progress max="100" .value=${percent} aria-labelledby="measured-work-words"></progress>
    <button type="button" @click=${cancel}>Cancel</button>
  </div>`;
}

function refused(form: Form): TemplateResult | typeof nothing {
  const { refused: words } = form.view.staging.measured;
  if (words.value.length === 0) return nothing;
  return html`<p class="to-mend">Not done; the job is as it was.</p>
    <ul class="heed">${words.value.map((each) => html`<li>${each}.</li>`)}</ul>`;
}
