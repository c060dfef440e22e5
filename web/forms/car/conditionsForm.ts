import { html, type TemplateResult } from "lit-html";
import { atPath } from "../../../shared/job/path.ts";
import type { CabinHeat } from "../../../shared/job/schema/conditions.ts";
import { heaters, usualWinter } from "../../../shared/parts/heaters.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { type KindOf, kindChoice } from "../../fields/kindChoice.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

const OTHERS = "conditions.others";
const MOST = 6;

/** The weather and the age that the packs are driven in beside today's; winter by a factor where there is none. */
export function conditionsForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: "conditions",
      name: "driven winter",
      without: "Winter is a factor on today's energy: the same for every road, heater and pack.",
      start: () => ({
        winter: usualWinter(heaters[2].heat),
        old: { resistance_ratio: usualOf("conditions.old.resistance_ratio") },
        others: [],
      }),
    },
    () => html`${weatherForm(form, "conditions.winter")}
      ${form.fields("allowance.aged_frac", "conditions.old.resistance_ratio")} ${othersForm(form)}`,
  );
}

/** One condition's weather and heater. */
function weatherForm(form: Form, path: string): TemplateResult {
  const at = (key: string) => `${path}.${key}`;
  return html`${form.fields(at("temperature_degC"), at("pack_degC"), at("wind_kmh"), at("isDark"))}
    ${heatForm(form, at("heat"))}
    ${form.fold(
      "Road, air and cells in this weather",
      form.fields(at("drag_ratio"), at("rolling_ratio"), at("usable_frac"), at("resistance_ratio")),
      path,
    )}`;
}

const kinds: readonly (KindOf & { readonly key: CabinHeat["kind"] })[] = [
  { key: "none", words: "not at all", make: () => ({ kind: "none" }) },
  { key: "byHour", words: "electric, on by the hour", make: () => ({ kind: "byHour", power_kW: 1.5 }) },
  { key: "thermostat", words: "electric, with a thermostat", make: () => ({ ...heaters[2].heat }) },
  { key: "fuel", words: "by burning fuel", make: () => ({ ...(heaters.at(-1) ?? heaters[0]).heat }) },
];

const fieldsOf: Readonly<Record<CabinHeat["kind"], readonly string[]>> = {
  none: [],
  byHour: ["power_kW"],
  thermostat: ["power_kW", "cabin_degC", "trip_km", "isPreheated", "capacity_kJpK", "loss_WpK"],
  fuel: ["power_kW", "fan_W", "fuel", "efficiency_frac"],
};

function heatForm(form: Form, path: string): TemplateResult {
  const heat = atPath(form.job, path) as CabinHeat | undefined;
  const kind = heat?.kind ?? "none";
  return html`${kindChoice(form, path, "The cabin is heated", kinds, kind)}
    ${form.fields(...fieldsOf[kind].map((key) => `${path}.${key}`))}`;
}

function othersForm(form: Form): TemplateResult {
  const others = form.job.conditions?.others ?? [];
  return listTable(form, {
    path: OTHERS,
    caption: "Conditions of your own.",
    entry: "condition",
    rowName: (i) => others[i]?.name ?? "",
    columns: [
      { key: "name", head: "Name" },
      { key: "temperature_degC", head: "Air temperature" },
      { key: "wind_kmh", head: "Wind" },
      { key: "isOld", head: "Pack at ten years" },
    ],
    most: MOST,
    add: withOneMore,
    remove: (state, i) => withoutEntry(state, OTHERS, i),
    below: (i) => form.fold("Weather and heater", weatherForm(form, `${OTHERS}.${i}`), `${OTHERS}.${i}`),
  });
}

function withOneMore(state: EditorState): EditorState {
  const { conditions } = state.job;
  const others = conditions?.others ?? [];
  const winter = conditions?.winter ?? usualWinter(heaters[2].heat);
  const taken = others.map(({ name }) => name);
  let number = 1;
  while (taken.includes(`Condition ${number}`)) number += 1;
  return withEntry(state, OTHERS, others.length, { ...winter, name: `Condition ${number}`, isOld: false });
}
