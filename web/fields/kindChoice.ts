import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import { withGroup } from "../editing/groupEdits.ts";
import { attempt, refusal } from "./attempt.ts";
import type { Form } from "./fieldContext.ts";
import { usualOrigins } from "./optionalGroup.ts";

/** One of several shapes that a group of the job may have. */
export interface KindOf {
  readonly key: string;
  readonly words: string;
  /** The group in this shape, worked from the job as it is; nothing where only a file can bring it. */
  readonly make?: (job: Job) => Readonly<Record<string, unknown>>;
}

/** Which of several shapes a group has; choosing another one makes it from what is there, in one step. */
export function kindChoice(
  form: Form,
  path: string,
  label: string,
  kinds: readonly KindOf[],
  now: string,
): TemplateResult {
  const id = `kind-${path.replaceAll(".", "-")}`;
  const choose = (event: Event) => {
    const make = kinds.find(({ key }) => key === (event.target as HTMLSelectElement).value)?.make;
    if (!make) return;
    const value = make(form.job);
    attempt(form, id, label, (state) => withGroup(state, path, value, usualOrigins(path, value)));
  };
  return html`<div class="field is-words">
    <label for=${id}>${label}</label>
    <span class="entry">
      <select id=${id} @change=${choose}>
        ${kinds.map(
          ({ key, words, make }) =>
            html`<option value=${key} .selected=${key === now} ?disabled=${!make && key !== now}>${words}</option>`,
        )}
      </select>
    </span>
    ${refusal(form, id)}
    <span class="as-printed">${kinds.find(({ key }) => key === now)?.words ?? ""}</span>
  </div>`;
}
