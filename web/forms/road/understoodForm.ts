import { html, nothing, type TemplateResult } from "lit-html";
import { readQuantity } from "../../../shared/quantity.ts";
import { type ColumnRole, columnRoles, type Question, type ReadLogOptions } from "../../../sim/index.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { questionWords } from "../../log/logText.ts";
import { openQuestions } from "../../log/openQuestions.ts";
import { choiceWords, roleWords } from "../../log/readingWords.ts";
import type { Brought, FileReading } from "../../worker/roads/roadsApi.ts";

/** How the files were understood, all of it changeable; what a file leaves open is asked first, the guess pre-set. */
export function understoodForm(form: Form, { files }: Brought): TemplateResult {
  const open = files.flatMap((file, i) => openQuestions(file).map((question) => ({ file, i, question })));
  const settled = files.map((file) => file.questions.filter((each) => each.decided && questionWords[each.name]));
  return html`${
    open.length === 0
      ? nothing
      : html`<div class="log-questions">
            <p class="to-mend">The log leaves this open, and only you can say:</p>
            <div class="fields">
              ${open.map(({ file, i, question }) => ask(form, file, i, question, files.length > 1, true))}
            </div>
          </div>`
  }
    ${form.fold(
      "How it was understood",
      html`${files.map(
        (file, i) => html`${files.length > 1 ? html`<p><strong>${file.file}</strong></p>` : nothing}
          <p class="aside">${[`text as ${file.guess.encoding}`, ...file.guess.layout].filter(Boolean).join("; ")}.</p>
          <div class="fields">${settled[i].map((question) => ask(form, file, i, question, files.length > 1, false))}</div>
          ${columns(form, file, i)}`,
      )}`,
    )}`;
}

function ask(
  form: Form,
  file: FileReading,
  index: number,
  question: Question,
  isOneOfMany: boolean,
  isOpen: boolean,
): TemplateResult {
  const { log } = form.view.staging;
  const id = `log-${index}-${question.name}`;
  const text = log.texts.value[id] ?? question.guess;
  const read = optionOf(question.name, text);
  const problem = "problem" in read ? read.problem : undefined;
  const put = (event: Event) => {
    const { value } = event.target as HTMLInputElement;
    log.texts.value = { ...log.texts.value, [id]: value };
    const option = optionOf(question.name, value);
    if (!isOpen && !("problem" in option)) void log.answer(index, option);
  };
  const label = `${questionWords[question.name] ?? question.name}${isOneOfMany ? ` in ${file.file}` : ""}`;
  const isDate = question.name === "date";
  return html`<div class="field ${question.choices.length > 0 ? "is-words" : ""} ${problem === undefined ? "" : "is-wrong"}">
    <label for=${id}>${label}</label>
    <span class="entry">
      ${
        question.choices.length > 0
          ? html`<select id=${id} aria-describedby="${id}-says" @change=${put}>
              ${question.choices.map(
                (key) => html`<option value=${key} .selected=${key === text}>${choiceWords[key] ?? key}</option>`,
              )}
            </select>`
          : html`<input
              id=${id}
              type=${isDate ? "date" : "text"}
              aria-describedby="${id}-says"
              aria-invalid=${problem === undefined ? "false" : "true"}
              autocomplete="off"
              .value=${text}
              @change=${put}
            />`
      }
      ${
        isOpen
          ? html`<button
              type="button"
              ?disabled=${"problem" in read}
              @click=${() => "problem" in read || void log.answer(index, read)}
            >
              That is right<span class="unseen">: ${label}</span>
            </button>`
          : nothing
      }
    </span>
    <p class="says" id="${id}-says" aria-live="polite">
      ${
        problem === undefined
          ? html`${isOpen ? "Guessed" : "Taken"}: ${question.evidence}.`
          : html`<strong>Wrong:</strong> ${problem}.`
      }
    </p>
  </div>`;
}

/** What an answer says to the reader of logs, or why it says nothing. */
function optionOf(name: Question["name"], text: string): ReadLogOptions | { readonly problem: string } {
  if (name === "interval") {
    const reading = readQuantity("duration", text, { min: 0.01, max: 3600, bareUnit: "s", label: "the time" });
    if (reading.ok && !reading.unknown) return { interval_s: reading.value };
    return { problem: reading.ok ? "nothing written, 0.01 to 3600 s wanted" : reading.problem.message };
  }
  if (name === "vehicle") return { vehicle: text };
  if (name === "date") return { date: text === "" ? undefined : text };
  return name === "speedUnit"
    ? { speedUnit: text as ReadLogOptions["speedUnit"] }
    : { hemisphere: text as ReadLogOptions["hemisphere"] };
}

function columns(form: Form, { format, guess }: FileReading, file: number): TemplateResult | typeof nothing {
  if (guess.columns.length === 0) return nothing;
  const { log } = form.view.staging;
  const choices = ["none" as const, ...columnRoles].map((key) => ({ key, words: roleWords[key] }));
  const choose = (index: number, before: ColumnRole | "none", role: string) => {
    const known = log.setting.value.answers[file]?.columns ?? {};
    const without = before === "none" ? {} : { [before]: "none" as const };
    const now = role === "none" ? {} : { [role]: index };
    void log.answer(file, { columns: { ...known, ...without, ...now } });
  };
  return html`<ul class="log-columns">
    ${guess.columns.map(({ index, header, role, unit, evidence, sample }) => {
      const name = header === "" ? `column ${index + 1}` : header;
      return html`<li>
        ${
          format === "table"
            ? viewChoice(
                `log-${file}-column-${index}`,
                `${name}${sample ? `, like ${sample}` : ""}`,
                choices,
                role,
                (key) => choose(index, role, key),
              )
            : html`<span>${name}: ${roleWords[role]};</span>`
        }
        <span class="aside">${[unit, evidence].filter(Boolean).join("; ")}</span>
      </li>`;
    })}
  </ul>`;
}
