import { html, type TemplateResult } from "lit-html";
import { inventedYear } from "../../../shared/job/inventedYear.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { drivenDaysForm } from "./drivenDaysForm.ts";

const MONTHS = [
  ...(["January", "February", "March", "April", "May", "June"] as const),
  ...(["July", "August", "September", "October", "November", "December"] as const),
];

/** The months' temperatures, and on which days the car is driven. */
export function yearForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: "year",
      name: "year of your own",
      without: "An invented year stands in: 2 °C in January, 18 °C in July, five days a week, four weeks of holidays.",
      start: () => ({ ...inventedYear }),
    },
    () => html`${form.fields("year.daysAWeek", "year.holidayWeeks", "longestDay_km", "longestDaysAYear")}
      ${drivenDaysForm(form)}
      ${form.fold(
        "Temperatures of the months",
        html`${form.fields(...MONTHS.map((month, i) => form.field(`year.months_degC.${i}`, month)))}
        ${form.fields("year.scatter_K")}`,
        "year.months_degC",
      )}`,
  );
}
