import { html, nothing, type TemplateResult } from "lit-html";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";

const PATH = "costs.running";
const YEARLY = `${PATH}.yearly`;
const MOST = 6;
/** Until the client's fuel record is typed: an old small car. Assumed. */
export const FIRST_l100km = 9.5;
/** Days of driving that a first yearly distance is made from: five a week, holidays off. Assumed. */
const DAYS_A_YEAR = 225;

/** What the car costs to run, now and converted, at the distances of a year that are worked out. */
export function runningForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: PATH,
      name: "running costs",
      without: "No fuel record: nothing is said of what it saves.",
      start: ({ usualDay_km }) => ({
        fuel: "petrol",
        use_l100km: FIRST_l100km,
        now: { servicing: { low: 0 }, roadCharge_perday: 0 },
        converted: { servicing: { low: 0 }, roadCharge_perday: 0 },
        yearly: [{ distance_km: Math.max(100, Math.round((usualDay_km * DAYS_A_YEAR) / 100) * 100) }],
      }),
    },
    () => html`${form.fields(`${PATH}.fuel`, `${PATH}.use_l100km`, `${PATH}.price_perl`)} ${distances(form)} ${upkeep(form)}
      ${form.fold("Drift of prices, discount, carbon", later(form), PATH)}`,
  );
}

function distances(form: Form): TemplateResult {
  const yearly = form.job.costs?.running?.yearly;
  if (!yearly) return html`${nothing}`;
  const last = (state: EditorState) => state.job.costs?.running?.yearly.at(-1)?.distance_km ?? 10_000;
  return listTable(form, {
    path: YEARLY,
    caption: "Distances of a year, the client’s own first.",
    entry: "distance",
    rowName: (i) => `distance ${i + 1}`,
    columns: [{ key: "distance_km", head: "A year" }],
    most: MOST,
    least: 1,
    add: (state) =>
      withEntry(state, YEARLY, state.job.costs?.running?.yearly.length ?? 0, { distance_km: last(state) }),
    remove: (state, i) => withoutEntry(state, YEARLY, i),
  });
}

function upkeep(form: Form): TemplateResult {
  return form.fields(
    ...["now", "converted"].flatMap((when) => [
      `${PATH}.${when}.servicing.low`,
      `${PATH}.${when}.servicing.high`,
      `${PATH}.${when}.roadCharge_perday`,
    ]),
    `${PATH}.chargedDays_frac`,
    `${PATH}.insuranceMore`,
  );
}

function later(form: Form): TemplateResult {
  return form.fields(
    `${PATH}.years`,
    `${PATH}.fuelDrift.low_frac`,
    `${PATH}.fuelDrift.high_frac`,
    `${PATH}.electricityDrift.low_frac`,
    `${PATH}.electricityDrift.high_frac`,
    `${PATH}.discount_frac`,
    `${PATH}.grid_gpkWh`,
  );
}
