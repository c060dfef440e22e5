import { html, nothing, type TemplateResult } from "lit-html";
import { message, messageIn, whole } from "../../../shared/quantity/message.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { WorthMeasuring } from "../../../sim/index.ts";

/** So many measurements are a morning's work; the rest stand in the workings. */
const SHOWN = 3;

/** What to measure first at the visit, and how far each of them may still move the answer. */
export function measureFirstView(found: readonly WorthMeasuring[], units: UnitHabit): TemplateResult | typeof nothing {
  const shown = found.filter(({ cost_km }) => cost_km >= 1).slice(0, SHOWN);
  if (shown.length === 0) return nothing;
  return html`<p>What to measure first:</p>
    <ol class="measure-first">
      ${shown.map(({ measurement, cost_km }) => {
        const worth = Number.isFinite(cost_km)
          ? message`it may cost ${whole("distance", cost_km, "up")} of a winter's day at ten years`
          : message`it decides whether the car drives this road at all`;
        return html`<li>${measurement.name}: ${messageIn(worth, units)}</li>`;
      })}
    </ol>`;
}
