import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { atPath, withPath } from "../../shared/job/path.ts";
import { inReadersUnits } from "../../shared/quantity/inReadersUnits.ts";
import type { QuantityReading } from "../../shared/quantity/reading/reading.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { allowedRange } from "../editing/fieldTable/allowedRange.ts";
import type { Field } from "../editing/fieldTable/fieldList.ts";
import { unusualAt } from "../editing/unusual.ts";
import { enterQuantity } from "./enterQuantity.ts";
import type { FieldContext } from "./fieldContext.ts";
import { fieldIds, says } from "./fieldParts.ts";
import { isBareNumber } from "./isBareNumber.ts";
import { originChoice, originWords } from "./originChoice.ts";
import { readField } from "./readField.ts";
import { shownQuantity } from "./shownQuantity.ts";

export type QuantityFieldSpec = Extract<Field, { type: "quantity" }>;

/** A field for a quantity: what was typed, how it was understood or why not, and where the value comes from. */
export function quantityField(context: FieldContext, path: string, field: QuantityFieldSpec): TemplateResult {
  const { jobEditor, typing, view } = context;
  const job = jobEditor.job.value;
  const draft = jobEditor.drafts.value[path];
  const origin = job.origins[path];
  const value = atPath(job, path);
  const ids = fieldIds(path, context.idPrefix);
  const isTyping = typing.value?.path === path;

  const shown = shownQuantity(field.kind, value, origin?.typed, view.units.value);
  const text = isTyping ? (typing.value?.text ?? "") : (draft?.typed ?? shown.text);
  const problem = isTyping ? undefined : draft?.problem;
  const isUsual = !draft && origin?.from === "usual";
  const isBare = isBareNumber(text);
  const isEmpty = draft !== undefined && draft.typed.trim() === "";
  // Nothing is said of plain digits that stood there already, and most fields hold them.
  const isPlain = /^[+-]?\d+(\.\d+)?$/.test(text.trim());
  const reading = isPlain && !context.typedHere.has(path) ? undefined : readField(context, path, field, text);
  const isSaid = reading?.ok === true && !reading.unknown && !reading.isAsTyped;
  // A tyre's marking is turned into a radius by a rule of thumb, which is said as long as the marking stands there.
  const isByRule = field.kind === "wheelRadius";

  const enter = (typed: string) => enterQuantity(context, path, field, typed);
  const write = (typed: string) => {
    enter(typed);
    leave(context);
  };
  return html`<div class="field ${isUsual ? "is-usual" : ""} ${problem === undefined ? "" : "is-wrong"}">
    <label for=${ids.input}>${inReadersUnits(field.label, view.units.value)}${field.isOptional ? html` <span class="aside">if known</span>` : nothing}</label>
    <span class="entry">
      <input
        id=${ids.input}
        type="text"
        autocomplete="off"
        spellcheck="false"
        .value=${live(text)}
        placeholder=${field.isOptional ? "not known" : ""}
        aria-describedby="${ids.says} ${ids.hint}"
        aria-invalid=${problem === undefined ? "false" : "true"}
        @input=${(event: Event) => enter((event.target as HTMLInputElement).value)}
        @change=${() => leave(context)}
        @blur=${() => leave(context)}
      />
      <span class="unit">${isBare ? shown.unit : nothing}</span>
    </span>
    ${
      value === undefined && !draft
        ? nothing
        : field.isChosen || field.kind === "count"
          ? isUsual
            ? html`<span class="origin-said">usual value</span>`
            : nothing
          : originChoice(context, path, field)
    }
    ${says(
      ids,
      problem,
      isSaid ? understood(reading, context.typedHere.has(path) || isByRule) : [],
      typeof value === "number" ? writeQuantity(field.kind, value, view.units.value) : undefined,
      isEmpty,
    )}
    ${isTyping ? nothing : isEmpty ? offerUsual(field, write, view.units.value) : asked(context.typedHere.has(path) ? reading : undefined, write, context)}
    ${isTyping || draft ? nothing : askUnusual(context, path, field)}
    <p class="hint" id=${ids.hint}>${hint(context, path, field)}</p>
    <span class="as-printed">
      ${draft ? "" : text} ${isBare ? shown.unit : ""}${origin && !field.isChosen ? ` (${originWords[origin.from]})` : ""}
    </span>
  </div>`;
}

function leave({ typing, jobEditor }: FieldContext) {
  typing.value = undefined;
  jobEditor.settle();
}

/** `14 1/4 cwt = 724 kg`, without what was typed anyway. */
function understood(reading: Extract<QuantityReading, { ok: true; unknown: false }>, saysNotes: boolean): string[] {
  const shown = reading.understood.includes(" = ")
    ? reading.understood.slice(reading.understood.indexOf(" = ") + 1)
    : "";
  return [shown, ...(saysNotes ? reading.notes : [])].filter((part) => part !== "");
}

/** A field emptied by hand takes its usual value only when that is asked for. */
function offerUsual({ kind, usual }: QuantityFieldSpec, write: (typed: string) => void, units: UnitHabit) {
  if (!usual) return nothing;
  return html`<p class="asked">
    <button type="button" @click=${() => write("unknown")}>Use the usual ${writeQuantity(kind, usual.value, units)}</button>
  </p>`;
}

/** A value beyond what nearly all have: taken, and asked about until its owner says that it is right. */
function askUnusual({ jobEditor, view }: FieldContext, path: string, field: QuantityFieldSpec) {
  const message = unusualAt(jobEditor.job.value, path, field, view.units.value);
  if (message === undefined) return nothing;
  const confirm = () =>
    jobEditor.change(`${field.label}: confirmed`, ({ job, drafts }) => ({
      job: withPath(job, "origins", {
        ...job.origins,
        [path]: { ...(job.origins[path] ?? { from: "typed" }), isConfirmed: true },
      }),
      drafts,
    }));
  return html`<p class="asked is-unusual">${message}. <button type="button" @click=${confirm}>It is right</button></p>`;
}

/** What only the person can say, or what was likely meant, as buttons that write it. */
function asked(reading: QuantityReading | undefined, write: (typed: string) => void, context: FieldContext) {
  if (!reading) return nothing;
  const question = "question" in reading ? reading.question : undefined;
  if (question) {
    return html`<p class="asked">
      ${question.text}
      ${question.choices.map(
        ({ label, text, remember }) =>
          html`<button
            type="button"
            @click=${() => {
              if (remember) context.remembered.value = { ...context.remembered.value, ...remember };
              write(text);
            }}
          >
            ${label}
          </button> `,
      )}
    </p>`;
  }
  const likely = reading.ok ? undefined : reading.likely;
  if (likely === undefined) return nothing;
  return html`<p class="asked">Was this meant? <button type="button" @click=${() => write(likely)}>${likely}</button></p>`;
}

function hint(context: FieldContext, path: string, field: QuantityFieldSpec): string {
  const { jobEditor, view } = context;
  const job = jobEditor.job.value;
  const range = allowedRange(job, path);
  const bare = (value: number) => shownQuantity(field.kind, value, undefined, view.units.value).text;
  const write = (value: number) => {
    const { text, unit } = shownQuantity(field.kind, value, undefined, view.units.value);
    return `${text} ${unit}`.trim();
  };
  const parts = [
    field.help && inReadersUnits(field.help, view.units.value),
    job.origins[path]?.note && `Noted: ${job.origins[path]?.note}.`,
  ];
  if (range) parts.push(`${bare(range.min)} to ${write(range.max)} can be entered.`);
  if (field.usual)
    parts.push(
      `Usual: ${write(field.usual.value)} (${inReadersUnits(field.usual.why, view.units.value)}); write unknown if it is not known.`,
    );
  return parts.filter((part) => part !== undefined && part !== "").join(" ");
}
