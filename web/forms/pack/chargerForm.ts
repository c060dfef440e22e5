import { html, type TemplateResult } from "lit-html";
import { chargers } from "../../../shared/parts/chargers.ts";
import { draftsBelow } from "../../fields/draftsBelow.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { partPicker } from "../parts/partPicker.ts";
import { curveFields } from "./curveFields.ts";

const first = ["charger.name", "charger.power_kW", "charger.efficiency_frac", "charger.max_V"];

/** The charger in the car, and generic ones to start from. */
export function chargerForm(form: Form): TemplateResult {
  return html`${form.fields(...first)}
    ${partPicker(form, { id: "charger", label: "A generic charger to start from", parts: chargers, path: "charger" })}
    ${form.fold("More about the charger", more(form), ...draftsBelow(form, "charger", first))}`;
}

function more(form: Form): TemplateResult {
  return html`${form.fields(
    "charger.min_V",
    "charger.maxAc_A",
    "charger.isThreePhase",
    "charger.maxDc_A",
    "charger.tail_A",
    "charger.carDraw_W",
  )}
  ${optionalGroup(
    form,
    {
      path: "charger.efficiencyByLoad",
      name: "efficiency by load",
      without: "One efficiency at every load.",
      start: ({ charger: { efficiency_frac } }) => ({
        load_frac: [0.1, 0.25, 1],
        efficiency_frac: [0.88, 0.95, 1].map((share) => Number((share * efficiency_frac).toFixed(3))),
      }),
    },
    () =>
      html`${curveFields(
        form,
        "charger.efficiencyByLoad.load_frac",
        "charger.efficiencyByLoad.efficiency_frac",
        (load) => `at ${Math.round(100 * load)} % of its power`,
      )}`,
  )}`;
}
