import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { problemAt } from "../../editing/problemAt.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { fieldIds, says } from "../../fields/fieldParts.ts";
import { withGear, withGearName, withoutGear } from "./gearEdits.ts";

const MOST_GEARS = 20;
const PATH = "driveline.gears";

/** The gears of the box, whose ratios stand elsewhere: names, efficiencies, and buttons to add one and take one out. */
export function gearsForm(form: Form): TemplateResult {
  const { gears } = form.job.driveline;
  const remove = (index: number) =>
    attempt(form, PATH, `${gears[index].name} gear taken out`, (state) => withoutGear(state, index));
  return html`${gears.map(
    ({ name }, i) => html`<fieldset class="gear">
      <legend class="unseen">${name} gear</legend>
      ${form.fields(
        nameField(form, i),
        form.field(`${PATH}.${i}.efficiency_frac`, `Efficiency of ${name}`),
        gears.length > 1
          ? html`<p class="buttons">
              <button type="button" @click=${() => remove(i)}>Take out<span class="unseen"> ${name} gear</span></button>
            </p>`
          : html``,
      )}
    </fieldset>`,
  )}
  ${
    gears.length < MOST_GEARS
      ? html`<p class="buttons">
          <button type="button" @click=${() => attempt(form, PATH, "A gear more", withGear)}>Add a gear</button>
        </p>`
      : nothing
  }
  ${refusal(form, PATH)}`;
}

/** A gear's name: where it changes, the gears used change with it. A name that will not do stays, with the reason. */
function nameField(form: Form, index: number): TemplateResult {
  const { name } = form.job.driveline.gears[index];
  const path = `${PATH}.${index}.name`;
  const ids = fieldIds(path);
  const draft = form.jobEditor.drafts.value[path];
  const rename = (event: Event) => {
    const typed = (event.target as HTMLInputElement).value.trim();
    const problems = form.jobEditor.change(`${name} gear renamed`, (state) => withGearName(state, index, typed));
    if (problems.length > 0) form.jobEditor.keepDraft(path, typed, problemAt(path, problems), "Gear");
  };
  return html`<div class="field is-words ${draft ? "is-wrong" : ""}">
    <label for=${ids.input}>Gear</label>
    <span class="entry">
      <input
        id=${ids.input}
        type="text"
        .value=${live(draft?.typed ?? name)}
        aria-describedby=${ids.says}
        aria-invalid=${draft ? "true" : "false"}
        @change=${rename}
      />
    </span>
    ${says(ids, draft?.problem, [])}
    <span class="as-printed">${name}</span>
  </div>`;
}
