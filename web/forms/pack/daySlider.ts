import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM, M_PER_MILE } from "../../../shared/units.ts";
import type { Form } from "../../fields/fieldContext.ts";

/** The usual day as something to push to and fro while two people talk. */
export function daySlider(form: Form): TemplateResult {
  const { usualDay_km, longestDay_km } = form.job;
  const units = form.view.units.value;
  // Steps of one in the reader's own unit.
  const [sign, unit_km] = units === "metric" ? ["km", 1] : ["miles", M_PER_MILE / M_PER_KM];
  const far = Math.max(usualDay_km, longestDay_km ?? 0) / unit_km;
  const most = Math.max(100, Math.ceil((1.5 * far) / 50) * 50);
  const shown = writeQuantity("distance", usualDay_km, units);
  return html`<div class="field is-slider">
    <label for="slider-day">Usual day</label>
    <span class="entry">
      <input
        id="slider-day"
        type="range"
        min="1"
        max=${most}
        step="1"
        .value=${live(String(Math.round(usualDay_km / unit_km)))}
        aria-valuetext=${shown}
        @input=${(event: Event) => {
          const { value } = event.target as HTMLInputElement;
          form.jobEditor.edit("usualDay_km", `${value} ${sign}`, Number(value) * unit_km, { what: "Usual day" });
        }}
        @change=${() => form.jobEditor.settle()}
      />
      <output for="slider-day">${shown}</output>
    </span>
    <span class="as-printed">${shown}</span>
  </div>`;
}
