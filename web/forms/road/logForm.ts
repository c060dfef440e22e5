import { html, nothing, type TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { problemWords } from "../../log/logText.ts";
import { choiceWords, formatWords } from "../../log/readingWords.ts";
import { logOutcome } from "./logOutcome.ts";
import { understoodForm } from "./understoodForm.ts";

const ID = "road-log";

/** Bringing the client's own log: where it is dropped, how far the reading is, and what became of it. */
export function logForm(form: Form): TemplateResult {
  const { log } = form.view.staging;
  const dropped = (event: DragEvent) => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    // A job is opened as a job wherever it is dropped: the page itself takes it.
    if (files.length === 0 || files.some(({ name }) => /\.json$/i.test(name))) return;
    event.preventDefault();
    event.stopPropagation();
    void log.bring(files);
  };
  const picked = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const files = Array.from(input.files ?? []);
    if (files.length > 0) void log.bring(files);
    input.value = ""; // the same file, mended, can be chosen again
  };
  return html`<div class="dropped-on road-log" @drop=${dropped} @dragover=${(event: DragEvent) => event.preventDefault()}>
    <p>
      <strong>The client's own road.</strong> Drop the log of a usual week here: from a telephone, a satellite receiver or
      an OBD reader; GPX, TCX, KML, NMEA 0183, or a table with commas or tabs. Several files of one week go together. Or
    </p>
    <p class="buttons">
      <span class="file">
        <input id=${ID} type="file" multiple accept=".gpx,.tcx,.kml,.nmea,.csv,.tsv,.txt,.log,.xml" @change=${picked} />
        <label for=${ID}>Choose log files</label>
      </span>
    </p>
    <p class="aside">
      Positions never leave this computer. They stay in this browser's own database; the job file and the client sheet hold
      speed, distance and height only.
    </p>
    ${progress(form)}
    <div role="status">${refused(form)}${log.done.value === "" ? nothing : html`<p>${log.done.value}</p>`}</div>
    ${brought(form)}
  </div>`;
}

function progress(form: Form): TemplateResult | typeof nothing {
  const { work, cancel } = form.view.staging.log;
  if (!work.value) return nothing;
  const { words, share_frac } = work.value;
  const percent = Math.floor(100 * share_frac);
  return html`<div class="log-work">
    <p id="log-work-words">${words}: ${percent} %</p>
    <progress max="100" .value=${percent} aria-labelledby="log-work-words"></progress>
    <button type="button" @click=${cancel}>Cancel</button>
  </div>`;
}

function refused(form: Form): TemplateResult | typeof nothing {
  const { refused: words } = form.view.staging.log;
  if (words.value.length === 0) return nothing;
  return html`<p class="to-mend">Not done; the job is as it was.</p>
    <ul class="heed">${words.value.map((each) => html`<li>${each}.</li>`)}</ul>`;
}

function brought(form: Form): TemplateResult | typeof nothing {
  const { log } = form.view.staging;
  const all = log.brought.value;
  if (!all) return nothing;
  const { files, leftOut } = all;
  const faults = files.flatMap((file) => file.problems.map(problemWords));
  const bad = files.reduce((sum, file) => sum + file.badLines, 0);
  return html`<div class="offer">
    <ul>
      ${files.map((file) => html`<li>${fileWords(file)}.</li>`)}
    </ul>
    ${
      leftOut.length === 0
        ? nothing
        : html`<p class="to-mend">Left out, since they are no logs:</p>
            <ul class="heed">${leftOut.map((each) => html`<li>${problemWords(each)}.</li>`)}</ul>`
    }
    ${understoodForm(form, all)}
    ${
      faults.length === 0
        ? nothing
        : form.fold(
            bad === 0 ? "What else was noted" : `Faults: ${bad} ${bad === 1 ? "line" : "lines"} not used`,
            html`<ul>${faults.map((each) => html`<li>${each}.</li>`)}</ul>`,
          )
    }
    ${logOutcome(form, all)}
    <p class="buttons"><button type="button" @click=${log.putBack}>Discard log</button></p>
  </div>`;
}

function fileWords({
  file,
  format,
  count,
  questions,
  hasSpeeds,
}: Parameters<typeof understoodForm>[1]["files"][number]): string {
  const unit = questions.find(({ name }) => name === "speedUnit")?.guess ?? "";
  // Sentences of a receiver lay their unit down, so that nothing is asked of it.
  const speeds = !hasSpeeds
    ? "no recorded speed"
    : unit === ""
      ? "speed recorded"
      : `speed in ${choiceWords[unit] ?? unit}`;
  return `${file}: ${formatWords[format]}, ${count} ${count === 1 ? "row" : "rows"}, ${speeds}`;
}
