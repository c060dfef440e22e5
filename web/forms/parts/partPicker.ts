import { html, nothing, type TemplateResult } from "lit-html";
import { atPath } from "../../../shared/job/path.ts";
import type { Part } from "../../../shared/parts/part.ts";
import { labelOf } from "../../editing/fieldTable/fieldAt.ts";
import { writeField } from "../../editing/fieldTable/writeAtPath.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { originWords } from "../../fields/originChoice.ts";
import { partRows } from "./partRows.ts";
import { type Replaced, replacedBy, takeIntoList, takePart } from "./takePart.ts";

/** A picker of generic parts for one group of the job. */
export interface PickerOf {
  readonly id: string;
  /** `A generic motor to start from`. */
  readonly label: string;
  readonly parts: readonly Part<unknown>[];
  /** The group of the job that a part takes the place of, or the list it is added to. */
  readonly path: string;
  readonly into?: "group" | "list" | "values";
  /** A sentence on a chosen part that only its place in the job can say. */
  readonly caution?: (part: Part<unknown>) => string | undefined;
}

/** Choosing a generic part: its figures with their bands and origins first, and what it would replace, then one step. */
export function partPicker(form: Form, picker: PickerOf): TemplateResult {
  const { chosen } = form.view.staging;
  const { id, label, parts } = picker;
  const part = parts.find((each) => each.id === chosen.value[id]);
  const choose = (to: string) => {
    chosen.value = { ...chosen.value, [id]: to };
  };
  return html`<div class="picker">
    <div class="field is-words">
      <label for="pick-${id}">${label}</label>
      <span class="entry">
        <select id="pick-${id}" @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
          <option value="" .selected=${part === undefined}>none chosen</option>
          ${parts.map((each) => html`<option value=${each.id} .selected=${each === part}>${each.title}</option>`)}
        </select>
      </span>
    </div>
    ${part ? offer(form, picker, part, () => choose("")) : nothing}
    ${refusal(form, id)}
  </div>`;
}

function offer(form: Form, picker: PickerOf, part: Part<unknown>, putBack: () => void): TemplateResult {
  const { id, path, into = "group" } = picker;
  const state = { job: form.job, drafts: form.jobEditor.drafts.value };
  const replaced = into === "group" ? replacedBy(state, path, part) : [];
  const stays = replaced.filter(({ canStay }) => canStay).map((each) => each.path);
  const take = (how: (state: EditorState) => EditorState) => {
    if (attempt(form, id, part.title, how)) putBack();
  };
  const whole = (kept: readonly string[]) => () =>
    take((at) =>
      into === "list" ? takeIntoList(at, path, part) : takePart(at, path, part, { kept, isAdded: into === "values" }),
    );
  const caution = picker.caution?.(part);
  return html`<div class="offer">
    <p>${sentenceOn(part)}</p>
    ${caution === undefined ? nothing : html`<p class="to-mend">${caution}</p>`}
    ${figures(form, picker, part)}
    ${replaced.length === 0 ? nothing : warning(form, part, path, replaced)}
    <p class="buttons">
      ${
        stays.length > 0
          ? html`<button type="button" @click=${whole(stays)}>Take it, but keep ${stays.length === 1 ? "this" : "these"}</button>
            <button type="button" @click=${whole([])}>Take all of it</button>`
          : html`<button type="button" @click=${whole([])}>${into === "list" ? "Add it" : "Take it"}</button>`
      }
      <button type="button" @click=${putBack}>Discard</button>
    </p>
  </div>`;
}

/** How much of a part is known how well, in words. */
function sentenceOn(part: Part<unknown>): string {
  const counts = new Map<string, number>();
  for (const { origin } of Object.values(part.origins)) counts.set(origin, (counts.get(origin) ?? 0) + 1);
  const many = [...counts].map(
    ([origin, count]) => `${count} ${count === 1 ? "is" : "are"} ${originPlural[origin] ?? origin}`,
  );
  const origin = atPath(part.data, "origin");
  const list = many.length > 1 ? `${many.slice(0, -1).join(", ")} and ${many.at(-1)}` : many.join();
  return `${typeof origin === "string" ? `Its figures are ${origin}. ` : ""}${typeof origin === "string" ? "Of them" : "Of its figures"} ${list}. Nobody's product: write your own part's figures over them.`;
}

const originPlural: Readonly<Record<string, string>> = {
  "published law": "from a published law",
  "common practice, no source": "common practice without a source",
  invented: "invented",
};

function figures(form: Form, { path, into, id }: PickerOf, part: Part<unknown>): TemplateResult {
  const rows = partRows(part, into === "list" ? `${path}.0` : path, form.view.units.value);
  return html`<details class="fold">
    <summary>What it brings, and how sure that is</summary>
    <div class="table-frame" role="region" aria-labelledby="pick-${id}-table" tabindex="0">
      <table>
        <caption id="pick-${id}-table">${part.title}</caption>
        <thead>
          <tr><th scope="col">Figure</th><th scope="col">Value</th><th scope="col">May be, and where from</th></tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ what, value, band, origin }) =>
              html`<tr><th scope="row">${what}</th><td>${value}</td><td>${band}; ${origin}</td></tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
}

function warning(form: Form, part: Part<unknown>, path: string, replaced: readonly Replaced[]): TemplateResult {
  const units = form.view.units.value;
  const format = ({ path: at, from, canStay }: Replaced) => {
    const before = atPath(form.job, at);
    const after = at === path ? undefined : atPath(part.data, at.slice(path.length + 1));
    const was = typeof before === "object" ? "" : ` ${writeField(at, before, units)}`;
    return canStay && typeof before !== "object"
      ? `${labelOf(at)}:${was}, ${originWords[from]}; the part has ${writeField(at, after, units)}`
      : `${labelOf(at)}:${was}, ${originWords[from]}; it goes, since the part has no such figure`;
  };
  return html`<p class="heed-head">These were measured or looked up for this car:</p>
    <ul class="heed">${replaced.map((each) => html`<li>${format(each)}</li>`)}</ul>`;
}
