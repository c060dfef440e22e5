import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import type { Form } from "./form.ts";

/** The usual day as something to push to and fro while two people talk. */
export function daySlider(form: Form): TemplateResult {
  const { usualDay_km, longestDay_km } = form.job;
  const most_km = Math.max(100, Math.ceil((1.5 * Math.max(usualDay_km, longestDay_km ?? 0)) / 50) * 50);
  const shown = writeQuantity("distance", usualDay_km, form.view.units.value);
  return html`<div class="field is-slider">
    <label for="slider-day">Usual day</label>
    <span class="entry">
      <input
        id="slider-day"
        type="range"
        min="1"
        max=${most_km}
        step="1"
        .value=${live(String(usualDay_km))}
        aria-valuetext=${shown}
        @input=${(event: Event) => {
          const { value } = event.target as HTMLInputElement;
          form.desk.edit("usualDay_km", `${value} km`, Number(value), { what: "Usual day" });
        }}
        @change=${() => form.desk.settle()}
      />
      <output for="slider-day">${shown}</output>
    </span>
    <span class="as-printed">${shown}</span>
  </div>`;
}
