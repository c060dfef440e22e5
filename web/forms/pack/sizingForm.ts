import type { TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";

/** What the smallest pack is sought for, and among how many. */
export function sizingForm(form: Form): TemplateResult {
  return form.fields(
    "sizing.day",
    "sizing.condition",
    "sizing.reserve_km",
    "sizing.sure",
    "sizing.modulesMost",
    "sizing.packMost_kg",
  );
}
