import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { type Answer, besideWords, compare, type DriveReport, freeze, withPrediction } from "../../../sim/index.ts";

/** What the page knows of a job's predictions, and how it keeps one more. */
export interface PredictionSetting {
  readonly job: Job;
  /** Absent while they are not of what is in the job now. */
  readonly reports?: { readonly runs: Omit<DriveReport, "enough">; readonly answer: Answer } | undefined;
  /** Changes the job as a step that Undo takes back; absent where the page is only looked at. */
  readonly change?: ((what: string, how: (job: Job) => Job) => void) | undefined;
  readonly now: () => Date;
}

/** What is frozen in the job, and the press that freezes what is predicted now. Nothing here changes one that is frozen. */
export function predictionView({ job, reports, change, now }: PredictionSetting): TemplateResult {
  const last = job.predictions.at(-1);
  const words = last
    ? besideWords(compare(last, job, reports)).map((each) => messageIn(each, job.units))
    : ["No prediction is frozen yet. Freeze one with the quote, to compare what comes later with it."];
  const keep = () => {
    if (!reports) return;
    const note = document.querySelector<HTMLInputElement>("#prediction-note")?.value;
    const at = now().toISOString();
    change?.("Prediction frozen", (present) =>
      withPrediction(present, freeze(present, reports, at, note?.slice(0, 200))),
    );
  };
  const isReady = reports?.answer.isBandKnown === true;
  return html`<div class="prediction">
    <p>${words.join(" ")}${last?.note ? ` For: ${last.note}.` : ""}</p>
    ${
      change === undefined
        ? nothing
        : html`<p class="buttons paper-tools">
            <label>For <input id="prediction-note" type="text" maxlength="200" size="18" placeholder="the quote" /></label>
            <button type="button" ?disabled=${!isReady} @click=${keep}>
              ${last ? "Freeze another prediction" : "Freeze as predicted"}
            </button>
          </p>`
    }
  </div>`;
}
