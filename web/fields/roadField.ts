import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { QuantityKind } from "../../shared/quantity/kinds/kinds.ts";
import { readQuantity } from "../../shared/quantity.ts";
import type { Form } from "./fieldContext.ts";
import { isBareNumber } from "./isBareNumber.ts";
import { shownQuantity } from "./shownQuantity.ts";

/** A quantity written for making a road, and no part of the job: what it is, or why it cannot be read. */
export interface RoadQuantity {
  readonly field: TemplateResult;
  /** In the job file's unit for the kind; nothing where nothing is written or it cannot be read. */
  readonly value: number | undefined;
  readonly problem: string | undefined;
}

export interface RoadFieldSpec {
  readonly id: string;
  readonly label: string;
  /** `number`: a plain number in `unit`. */
  readonly kind: QuantityKind | "number";
  readonly usual: string;
  readonly unit?: string;
  readonly min: number;
  readonly max: number;
  readonly mayBeEmpty?: boolean;
}

/** A field whose text is not in the job yet; the bounds are in the kind's own unit. */
export function roadQuantity(form: Form, spec: RoadFieldSpec): RoadQuantity {
  const { texts } = form.view.staging.log;
  const text = texts.value[spec.id] ?? spec.usual;
  const { unit: bareUnit, value, problem } = read(form, spec, text);
  const { id } = spec;
  const field = html`<div class="field ${problem === undefined ? "" : "is-wrong"}">
    <label for=${id}>${spec.label}</label>
    <span class="entry">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        .value=${live(text)}
        aria-describedby="${id}-says"
        aria-invalid=${problem === undefined ? "false" : "true"}
        @input=${(event: Event) => {
          texts.value = { ...texts.value, [id]: (event.target as HTMLInputElement).value };
        }}
        @change=${() => form.jobEditor.settle()}
      />
      <span class="unit">${isBareNumber(text) ? bareUnit : nothing}</span>
    </span>
    <p class="says" id="${id}-says" aria-live="polite">
      ${problem === undefined ? nothing : html`<strong>Wrong:</strong> ${problem}.`}
    </p>
  </div>`;
  return { field, value, problem };
}

function read(form: Form, { kind, label, unit = "", min, max, mayBeEmpty }: RoadFieldSpec, text: string) {
  const isEmpty = text.trim() === "" && mayBeEmpty === true;
  if (kind === "number") {
    const value = /^\d+([.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : Number.NaN;
    if (isEmpty || (value >= min && value <= max))
      return { unit, value: isEmpty ? undefined : value, problem: undefined };
    const allowed = `${min} to ${max}${unit === "" ? "" : ` ${unit}`}`;
    return { unit, value: undefined, problem: `found "${text.slice(0, 20)}", a number from ${allowed} wanted` };
  }
  const bareUnit = shownQuantity(kind, undefined, undefined, form.view.units.value).unit;
  const reading = isEmpty ? undefined : readQuantity(kind, text, { min, max, label: label.toLowerCase(), bareUnit });
  return {
    unit: bareUnit,
    value: reading?.ok && !reading.unknown ? reading.value : undefined,
    problem: reading?.ok === false ? reading.problem.message : undefined,
  };
}
