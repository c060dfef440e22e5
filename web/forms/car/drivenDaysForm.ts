import { html, nothing, type TemplateResult } from "lit-html";
import { DAYS_MOST } from "../../../shared/job/schema/year.ts";
import { withGroup, withoutGroup } from "../../editing/groupEdits.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";

const PATH = "year.daysDriven_km";

/** The days that driven days are drawn from: a list to type or paste where the job has one, else how usual days differ and a button for a list. */
export function drivenDaysForm(form: Form): TemplateResult {
  const { year, usualDay_km, origins } = form.job;
  const days_km = year?.daysDriven_km;
  const begin = () =>
    attempt(form, PATH, "list of driven days added", (state) => withGroup(state, PATH, [usualDay_km]));
  if (days_km === undefined)
    return html`${form.fields("year.spread_frac")}
      <p class="buttons"><button type="button" @click=${begin}>Add the client's own days</button></p>
      ${refusal(form, PATH)}`;
  const remove = () => attempt(form, PATH, "list of driven days removed", (state) => withoutGroup(state, PATH));
  const typed = days_km.filter((_, i) => origins[`${PATH}.${i}`] !== undefined).length;
  const origin = origins[PATH];
  const source =
    origin?.from !== "measured" ? "typed" : typed === 0 ? "from a log" : `from a log, ${typed} of them typed`;
  return html`${form.fold(
    `Driven days: ${days_km.length}, ${source}`,
    listTable(form, {
      path: PATH,
      isOfValues: true,
      caption: "How far the car went on each driven day, in any order: the year's usual days are drawn from these.",
      entry: "day",
      rowName: (i) => `day ${i + 1}`,
      columns: [{ key: "km", head: "Distance" }],
      most: DAYS_MOST,
      least: 1,
      add: (state) => withEntry(state, PATH, state.job.year?.daysDriven_km?.length ?? 0, state.job.usualDay_km),
      remove: (state, i) => withoutEntry(state, PATH, i),
    }),
    PATH,
  )}
    ${origin && origin.from !== "measured" && origin.note ? html`<p class="aside">Where they are from: ${origin.note}.</p>` : nothing}
    <p class="aside">The usual day is their middle one: moving it makes all of them longer or shorter. The longest day stands apart.</p>
    <p class="buttons"><button type="button" @click=${remove}>Remove the list of days</button></p>`;
}
