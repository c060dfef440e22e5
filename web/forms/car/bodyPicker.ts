import type { TemplateResult } from "lit-html";
import { bodies } from "../../../shared/parts/bodies.ts";
import { tyres } from "../../../shared/parts/tyres.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { partPicker } from "../parts/partPicker.ts";

/** Generic old bodies, for their drag. */
export function bodyPicker(form: Form): TemplateResult {
  return partPicker(form, {
    id: "body",
    label: "Body type",
    parts: bodies,
    path: "vehicle.roadLoad",
    caution: () =>
      form.job.vehicle.roadLoad.kind === "coastDown"
        ? "The car's own coast-down goes if a body's usual drag takes its place."
        : undefined,
  });
}

/** Generic tyres by kind and era. */
export function tyrePicker(form: Form): TemplateResult {
  return partPicker(form, {
    id: "tyres",
    label: "Tyre type",
    parts: tyres,
    path: "vehicle.tyres",
  });
}
