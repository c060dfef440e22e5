import type { TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

/** The hood of an open car: which way the drag holds for, and how much more it makes down. */
export function hoodForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: "vehicle.hood",
      name: "hood",
      without: "One drag for all weathers.",
      start: () => ({ isDown: false, downDrag_ratio: usualOf("vehicle.hood.downDrag_ratio") }),
    },
    () => form.fields("vehicle.hood.isDown", "vehicle.hood.downDrag_ratio"),
  );
}
