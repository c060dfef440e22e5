import { html, type TemplateResult } from "lit-html";
import { chargers } from "../../../shared/parts/chargers.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { partPicker } from "../parts/partPicker.ts";

/** The charger in the car, and generic ones to start from. */
export function chargerForm(form: Form): TemplateResult {
  return html`${form.fields("charger.name", "charger.efficiency_frac", "charger.max_V")}
    ${partPicker(form, { id: "charger", label: "A generic charger to start from", parts: chargers, path: "charger" })}`;
}
