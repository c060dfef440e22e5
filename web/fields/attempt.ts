import { html, nothing, type TemplateResult } from "lit-html";
import type { Road } from "../../shared/job/schema/road.ts";
import type { EditorState } from "../editing/jobEditor.ts";
import { problemAt } from "../editing/problemAt.ts";
import type { Form } from "./fieldContext.ts";

/** Tries a change of the job (`checked` as in `checkJob`); where it is refused, the sentence that says why stays at `place`. Whether it was done. */
export function attempt(
  form: Form,
  place: string,
  what: string,
  how: (state: EditorState) => EditorState,
  checked: readonly Road[] = [],
): boolean {
  const { refused } = form.view.staging;
  const problems = form.jobEditor.change(what, how, checked);
  const { [place]: _before, ...others } = refused.value;
  refused.value = problems.length === 0 ? others : { ...others, [place]: problemAt("", problems) };
  return problems.length === 0;
}

/** Why the last change asked for at `place` was refused, if it was. */
export function refusal(form: Form, place: string): TemplateResult {
  const words = form.view.staging.refused.value[place];
  return html`<p class="refused" role="status">
    ${words === undefined ? nothing : html`<strong>Not done:</strong> ${words}.`}
  </p>`;
}
