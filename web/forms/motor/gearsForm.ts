import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { problemAt } from "../../editing/problemAt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { fieldIds, says } from "../../fields/fieldParts.ts";
import { listTable } from "../../fields/listTable.ts";
import { withGear, withGearName, withoutGear } from "./gearEdits.ts";

const MOST_GEARS = 20;
const PATH = "driveline.gears";

/** The gears of the box: a row each. A gear renamed keeps its place among the gears used. */
export function gearsForm(form: Form): TemplateResult {
  const { gears } = form.job.driveline;
  return listTable(form, {
    path: PATH,
    caption: "The gears.",
    entry: "gear",
    rowName: (i) => gears[i].name,
    columns: [
      { key: "name", head: "Gear" },
      { key: "efficiency_frac", head: "Efficiency" },
    ],
    most: MOST_GEARS,
    least: 1,
    add: withGear,
    remove: withoutGear,
    cell: (i, key) => (key === "name" ? nameField(form, i) : undefined),
  });
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
