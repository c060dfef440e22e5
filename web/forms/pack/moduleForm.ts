import { html, type TemplateResult } from "lit-html";
import { atPath } from "../../../shared/job/path.ts";
import { modules } from "../../../shared/parts/modules.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";
import { partPicker } from "../parts/partPicker.ts";
import { curveFields } from "./curveFields.ts";
import { testedForm } from "./testedForm.ts";

const atCharge = (soc_frac: number) => `at ${Math.round(100 * soc_frac)} % charge`;

/** A generic module to start from. */
export function modulePicker(form: Form): TemplateResult {
  const { seriesCells, cellMax_V } = form.job.module;
  return partPicker(form, {
    id: "module",
    label: "A generic module to start from",
    parts: modules,
    path: "module",
    caution: ({ data }) => {
      const full_V = Number(atPath(data, "seriesCells")) * Number(atPath(data, "cellMax_V"));
      return Math.abs(full_V / (seriesCells * cellMax_V) - 1) > 0.01
        ? "The packs below keep their numbers of modules: with this one their voltages change, so set them anew."
        : undefined;
    },
  });
}

/** Everything of a module that a first answer does without. */
export function moduleForm(form: Form): TemplateResult {
  const units = form.view.units.value;
  return html`
    ${form.fields(
      "module.origin",
      "module.chemistry",
      "module.seriesCells",
      "module.parallelCells",
      "module.cellMin_V",
      "module.cellMax_V",
      "module.length_mm",
      "module.width_mm",
      "module.height_mm",
    )}
    <fieldset class="group">
      <legend>Currents it stands</legend>
      ${form.fields("module.discharge.continuous_A", "module.discharge.peak_A", "module.discharge.peak_s")}
      ${form.fields("module.charge.continuous_A", "module.charge.peak_A", "module.charge.peak_s")}
    </fieldset>
    <fieldset class="group">
      <legend>Charging in the cold, by braking or from a lead</legend>
      ${form.fields("module.coldCharge.none_degC", "module.coldCharge.full_degC")}
    </fieldset>
    ${testedForm(form)}
    ${optionalGroup(
      form,
      {
        path: "module.heat",
        name: "heat limit",
        without: "Its heat is left out: it stays as warm as it was at the start.",
        start: ({ module }) => ({
          capacity_kJpK: Number(module.mass_kg.toPrecision(3)), // about 1 kJ/K a kilogram: common practice, no source
          cooling_WpK: usualOf("module.heat.cooling_WpK"),
          derateFrom_degC: usualOf("module.heat.derateFrom_degC"),
          derateTo_degC: usualOf("module.heat.derateTo_degC"),
        }),
      },
      () =>
        form.fields(
          "module.heat.capacity_kJpK",
          "module.heat.cooling_WpK",
          "module.heat.derateFrom_degC",
          "module.heat.derateTo_degC",
        ),
    )}
    <fieldset class="group">
      <legend>Resistance of a module at 25 °C, discharging</legend>
      ${curveFields(form, "module.resistance.soc_frac", "module.resistance.module_mohm", atCharge)}
      ${form.fields("module.charging_ratio")}
    </fieldset>
    <fieldset class="group">
      <legend>Resistance warm and cold, times that at 25 °C</legend>
      ${curveFields(
        form,
        "module.resistanceByTemperature.temperature_degC",
        "module.resistanceByTemperature.resistance_ratio",
        (at) => `at ${writeQuantity("temperature", at, units)}`,
      )}
    </fieldset>
    ${form.fold(
      "Voltage of a cell at rest, over its charge",
      html`${curveFields(form, "module.openCircuit.soc_frac", "module.openCircuit.cell_V", atCharge)}`,
      ...form.job.module.openCircuit.cell_V.map((_, i) => `module.openCircuit.cell_V.${i}`),
    )}
  `;
}
