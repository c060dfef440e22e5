import { html, nothing, type TemplateResult } from "lit-html";
import { atPath } from "../../../shared/job/path.ts";
import type { Form } from "../../fields/fieldContext.ts";

/** The values of a curve, a field each, called by their place on its axis; `axis` is an empty path for a bare list. */
export function curveFields(
  form: Form,
  axis: string,
  values: string,
  place: (at: number) => string,
): TemplateResult | typeof nothing {
  const places = atPath(form.job, axis);
  if (!Array.isArray(places)) return nothing;
  return html`${form.fields(...places.map((at: number, i) => form.field(`${values}.${i}`, place(at))))}`;
}
