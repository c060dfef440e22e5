import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import type { FittedMotor } from "../../../sim/index.ts";
import { withoutStaged } from "../../editing/stagedTexts.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { isBareNumber } from "../../fields/isBareNumber.ts";
import { shownQuantity } from "../../fields/shownQuantity.ts";
import { DATASHEET } from "../../fields/staging.ts";
import { MOST_POINTS, pointFigures, type ReadSheet, readDatasheet, readFigure, sheetFigures } from "./datasheet.ts";
import { takeDatasheet } from "./takeMotor.ts";

const ID = "datasheet";

/** Datasheet figures, the loss formula fitted to them with how well it meets them, and a button that takes it. */
export function datasheetForm(form: Form): TemplateResult {
  const texts = form.view.staging.datasheet.value;
  const read = readDatasheet(texts, form.view.units.value, form.job.motor.kind);
  const shownRows = Math.min(MOST_POINTS, 1 + writtenRows(texts));
  return html`<p>
      Copy what the sheet prints. Nothing in the job changes until it is taken. Efficiencies are of motor and controller
      together; one or two are enough to begin with.
    </p>
    <div class="fields">
      ${Object.entries(sheetFigures).map(([key, { kind, label }]) => figure(form, read, key, kind, label))}
    </div>
    ${Array.from(
      { length: shownRows },
      (_, row) => html`<fieldset class="point">
        <legend>Efficiency point ${row + 1}</legend>
        <div class="fields">
          ${Object.entries(pointFigures).map(([key, { kind, label }]) =>
            figure(form, read, `points.${row}.${key}`, kind, label),
          )}
        </div>
      </fieldset>`,
    )}
    <div role="status">${outcome(form, read)}</div>
    ${refusal(form, ID)}`;
}

/** Rows of efficiency points with anything in them, counted to the last one written in. */
function writtenRows(texts: Readonly<Record<string, string>>): number {
  let rows = 0;
  for (const [key, text] of Object.entries(texts)) {
    const row = /^points\.(\d+)\./.exec(key)?.[1];
    if (row !== undefined && text.trim() !== "") rows = Math.max(rows, Number(row) + 1);
  }
  return rows;
}

function figure(form: Form, read: ReadSheet, key: string, kind: QuantityKind, label: string): TemplateResult {
  const { datasheet } = form.view.staging;
  const units = form.view.units.value;
  const id = `sheet-${key.replaceAll(".", "-")}`;
  const text = datasheet.value[key] ?? "";
  const reading = readFigure(kind, text, units);
  const problem = read.problems[key];
  const isBare = isBareNumber(text);
  const { unit } = shownQuantity(kind, undefined, undefined, units);
  const understood =
    reading?.ok && !reading.unknown && !isBare ? reading.understood.slice(reading.understood.indexOf(" = ") + 1) : "";
  const write = (event: Event) => {
    datasheet.value = { ...datasheet.value, [key]: (event.target as HTMLInputElement).value };
  };
  return html`<div class="field ${problem === undefined ? "" : "is-wrong"}">
    <label for=${id}>${label}</label>
    <span class="entry">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        spellcheck="false"
        .value=${live(text)}
        aria-describedby="${id}-says"
        aria-invalid=${problem === undefined ? "false" : "true"}
        @input=${write}
        @change=${() => form.jobEditor.settle()}
      />
      <span class="unit">${isBare ? unit : nothing}</span>
    </span>
    <p class="says" id="${id}-says" aria-live="polite">
      ${problem === undefined ? understood : html`<strong>Wrong:</strong> ${problem}.`}
    </p>
  </div>`;
}

function outcome(form: Form, { missing, problems, fitted }: ReadSheet): TemplateResult | typeof nothing {
  const { datasheet } = form.view.staging;
  if (Object.values(datasheet.value).every((text) => text.trim() === "")) return nothing;
  if (!fitted) {
    const wrong = Object.keys(problems).length;
    return html`<p class="aside">
      ${wrong > 0 ? `${wrong} wrong above. ` : ""}${missing.length > 0 ? `Still wanted: ${missing.join(", ")}.` : ""}
    </p>`;
  }
  const texts = datasheet.value;
  const take = () => {
    attempt(form, ID, "Motor by its datasheet", (at) =>
      withoutStaged(takeDatasheet(at, fitted, keptTexts(form, texts)), DATASHEET),
    );
  };
  return html`<div class="offer">
    ${howItFits(form, fitted)}
    <p class="buttons"><button type="button" @click=${take}>Take these figures as the motor's</button></p>
  </div>`;
}

/** What was typed may be kept as long as it means the same in the job's own units. */
function keptTexts(form: Form, texts: Readonly<Record<string, string>>): Record<string, string> {
  const isMetric = form.view.units.value === "metric";
  return Object.fromEntries(Object.entries(texts).filter(([, text]) => isMetric || !isBareNumber(text)));
}

/** The fit: the law, where constant torque ends, and each point with what the law makes of it. */
function howItFits(form: Form, { baseSpeed_rpm, residuals, notes, law }: FittedMotor): TemplateResult {
  const units = form.view.units.value;
  const percent = (share: number) => `${(Math.round(1000 * share) / 10 + 0).toFixed(1)} %`; // never -0.0
  const terms = `${format(law.copper_coeff)} T² + ${format(law.iron_coeff)} w + ${format(law.windage_coeff)} w³ + ${format(law.constant_W)} W`;
  return html`<p>
      Full torque up to ${writeQuantity("rotation", baseSpeed_rpm, units)}, full power above. Losses by the law
      <span class="formula">${terms}</span>, torque T in Nm and speed w in rad/s.
    </p>
    ${
      residuals.length === 0
        ? nothing
        : html`<div class="table-frame" role="region" aria-labelledby="fit-table" tabindex="0">
            <table>
              <caption id="fit-table">The formula beside the datasheet's points</caption>
              <thead>
                <tr>
                  <th scope="col">Point</th><th scope="col" class="is-number">Sheet</th>
                  <th scope="col" class="is-number">Law</th><th scope="col" class="is-number">Off by</th>
                  <th scope="col" class="is-number">Loss, sheet</th><th scope="col" class="is-number">Loss, law</th>
                </tr>
              </thead>
              <tbody>
                ${residuals.map(
                  (point) => html`<tr>
                    <th scope="row">
                      ${writeQuantity("rotation", point.speed_rpm, units)}, ${writeQuantity("torque", point.torque_Nm, units)}
                    </th>
                    <td class="is-number">${percent(point.efficiency_frac)}</td>
                    <td class="is-number">${percent(point.fitted_frac)}</td>
                    <td class="is-number">${percent(point.fitted_frac - point.efficiency_frac)}</td>
                    <td class="is-number">${format(point.given_W)} W</td>
                    <td class="is-number">${format(point.fitted_W)} W</td>
                  </tr>`,
                )}
              </tbody>
            </table>
          </div>`
    }
    ${notes.length === 0 ? nothing : html`<ul>${notes.map((note) => html`<li>${note}.</li>`)}</ul>`}`;
}

function format(value: number): string {
  return String(Number(value.toPrecision(3)));
}
