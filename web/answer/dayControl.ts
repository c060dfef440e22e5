import { batch, type Signal, signal } from "@preact/signals-core";
import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { inUnits, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import type { Form } from "../fields/fieldContext.ts";

/** Where the usual day was before it was last pushed. */
export interface DayBefore {
  readonly before_km: Signal<number | undefined>;
  /** A push is under way: its steps are one change. */
  isPushing: boolean;
}

export function createDayBefore(): DayBefore {
  return { before_km: signal(undefined), isPushing: false };
}

/** The usual day as something to push to and fro while two people talk, with a tick where it was and one where it was pinned. */
export function dayControl(form: Form, day: DayBefore): TemplateResult {
  const { usualDay_km, longestDay_km, pinned } = form.job;
  const units = form.view.units.value;
  // Steps of one in the reader's own unit.
  const { number: perKm, unit } = inUnits("distance", 1, units);
  const far = Math.max(usualDay_km, longestDay_km ?? 0) * perKm;
  const most = Math.max(100, Math.ceil((1.5 * far) / 50) * 50);
  const shown = writeQuantity("distance", usualDay_km, units);
  const push = (event: Event) => {
    // Read first: what is drawn anew for the tick puts the job's own day back into the slider.
    const value = Number((event.target as HTMLInputElement).value);
    batch(() => {
      if (!day.isPushing) day.before_km.value = usualDay_km;
      day.isPushing = true;
      form.jobEditor.edit("usualDay_km", `${value} ${unit}`, value / perKm, { what: "Usual day" });
    });
  };
  const settle = () => {
    day.isPushing = false;
    form.jobEditor.settle();
  };
  const tick = (at_km: number | undefined, kind: string) =>
    at_km === undefined || at_km === usualDay_km
      ? nothing
      : html`<span class="day-tick ${kind}" style="--at:${Math.min(1, (at_km * perKm - 1) / (most - 1))}"></span>`;
  return html`<div class="day-control">
    <label for="answer-day">Usual day</label>
    <output for="answer-day">${shown}</output>
    <span class="day-rail">
      ${tick(day.before_km.value, "was")} ${tick(pinned?.state.usualDay_km, "pinned")}
      <input
        id="answer-day"
        type="range"
        min="1"
        max=${most}
        step="1"
        .value=${live(String(Math.round(usualDay_km * perKm)))}
        aria-valuetext=${shown}
        @input=${push}
        @change=${settle}
      />
    </span>
  </div>`;
}
