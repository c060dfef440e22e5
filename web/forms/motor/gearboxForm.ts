import { html, type TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { gearsForm } from "./gearsForm.ts";
import { transferBoxForm } from "./transferBoxForm.ts";

/** Everything between motor and wheels that a first answer does without. */
export function gearboxForm(form: Form): TemplateResult {
  return html`
    ${form.fields(
      "driveline.drivenAxle",
      "driveline.finalDriveEfficiency_frac",
      "driveline.noLoadDrag_Nm",
      "driveline.wholeEfficiency_frac",
    )}
    ${transferBoxForm(form)}
    <fieldset class="group"><legend>The gears, one by one</legend>${gearsForm(form)}</fieldset>
  `;
}

/** The paths of its fields, so that what is to mend there is counted. */
export function gearboxPaths({ job }: Form): string[] {
  return [
    ...["drivenAxle", "finalDriveEfficiency_frac", "noLoadDrag_Nm", "wholeEfficiency_frac", "transferBox"].map(
      (key) => `driveline.${key}`,
    ),
    ...job.driveline.gears.flatMap((_, i) => [`driveline.gears.${i}.efficiency_frac`, `driveline.gears.${i}.name`]),
  ];
}
