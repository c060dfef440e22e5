import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { type RepairKind, repairKinds } from "../../../sim/index.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { dayWords, problemWords, repairWords } from "../../log/logText.ts";
import { openQuestions } from "../../log/openQuestions.ts";
import { neverOff } from "../../log/readingWords.ts";
import type { Brought, Drive, PlannedRoute } from "../../worker/roads/roadsApi.ts";
import { logRoadForm } from "./logRoadForm.ts";
import { plannedRouteForm } from "./plannedRouteForm.ts";

/** What became of the log: a cleaned drive with its repairs, a planned route, or why neither. */
export function logOutcome(form: Form, brought: Brought): TemplateResult {
  const { outcome, files } = brought;
  const isOpen = files.some((file) => openQuestions(file).length > 0);
  if (outcome.kind === "unclean") {
    return html`<p class="to-mend">No drive could be made of it as it was understood; the job is as it was.</p>
      <ul class="heed">${outcome.problems.map((each) => html`<li>${problemWords(each)}.</li>`)}</ul>`;
  }
  if (outcome.kind === "route") return plannedRouteForm(form, outcome, routeWords(form, outcome));
  return html`${verdict(form, outcome)} ${repairs(form, outcome)} ${
    outcome.trips.length === 0 ? noTrips(outcome, form.view.units.value) : logRoadForm(form, outcome, isOpen)
  }`;
}

function routeWords(form: Form, { distance_m, climb_m }: PlannedRoute): string {
  const units = form.view.units.value;
  const hills =
    climb_m === undefined ? "without heights" : `with ${writeQuantity("elevation", climb_m, units)} of climb`;
  return `${writeQuantity("distance", distance_m / M_PER_KM, units)}, ${hills}`;
}

function verdict(form: Form, { quality, trips, problems, hasPositions }: Drive): TemplateResult {
  const units = form.view.units.value;
  const whole_m = trips.reduce((sum, trip) => sum + trip.distance_m, 0);
  const format = (words: string) => sentence(inReadersUnits(words, units));
  const notes = [quality.samplingNote, ...problems.map(problemWords)].filter((each) => each !== undefined);
  return html`<p>
      <strong>Quality: ${quality.verdict}.</strong> ${format(quality.reasons.join("; "))}
      ${trips.length} ${trips.length === 1 ? "trip" : "trips"}, ${writeQuantity("distance", whole_m / M_PER_KM, units)} in all;
      speed ${quality.speedSource === "partly" ? "partly as recorded, partly from positions" : quality.speedSource === "recorded" ? (hasPositions ? "as recorded, weighed against positions" : "as recorded, no positions") : "from positions"},
      ${quality.heightSource === "recorded" ? "height as recorded" : "no heights: the road counts as flat"}.
    </p>
    ${notes.length === 0 ? nothing : html`<ul class="heed">${notes.map((each) => html`<li>${format(each)}</li>`)}</ul>`}`;
}

function noTrips({ isStill, quality }: Drive, units: UnitHabit): TemplateResult {
  if (quality.noDrive !== undefined) {
    const why = inReadersUnits(quality.noDrive, units);
    return html`<p class="to-mend">No road can be made of this log: ${why}.</p>`;
  }
  return html`<p class="to-mend">
    ${
      isStill
        ? "The log goes nowhere: no movement. There is no road to make of it."
        : `No drive of ${writeQuantity("elevation", 50, units)} or more is in the log. There is no road to make of it.`
    }
  </p>`;
}

/** Every class of repair that was done or is left out, with a tick that leaves it out. */
function repairs(form: Form, { repairs: done, moved, days, utcOffset_s }: Drive): TemplateResult {
  const { log } = form.view.staging;
  const { off } = log.setting.value;
  const format = (words: string) => sentence(inReadersUnits(words, form.view.units.value));
  const toggle = (kind: RepairKind, isOn: boolean) => {
    void log.change({ off: isOn ? off.filter((each) => each !== kind) : [...off, kind] });
  };
  const shown = repairKinds.filter((kind) => off.includes(kind) || done.some((repair) => repair.kind === kind));
  const day = (time_s: number) =>
    days.length > 1 ? `${dayWords(new Date((time_s + utcOffset_s) * 1000).toISOString().slice(0, 10))}: ` : "";
  if (shown.length === 0) return html`<p>Nothing had to be repaired.</p>`;
  const kinds = done.map(({ kind }) => repairWords[kind].toLowerCase()).join(", ");
  return html`<details class="fold"><summary>Repaired: ${kinds === "" ? "nothing, as asked" : kinds}</summary>
  <fieldset class="log-repairs folded">
    <legend>What was repaired; clear a tick to see the log without it</legend>
    <ul>
      ${shown.map((kind) => {
        const repair = done.find((each) => each.kind === kind);
        const id = `log-repair-${kind}`;
        const was = moved?.[kind];
        const left = was === undefined ? "Left as it was." : format(`Left as it was; the repair had moved ${was}`);
        const words = html`<strong>${repairWords[kind]}</strong>`;
        return html`<li>
          ${
            neverOff.has(kind)
              ? html`<span class="always">${words}</span>`
              : html`<span class="choice">
                  <input
                    id=${id}
                    type="checkbox"
                    .checked=${live(!off.includes(kind))}
                    @change=${(event: Event) => toggle(kind, (event.target as HTMLInputElement).checked)}
                  />
                  <label for=${id}>${words}</label>
                </span>`
          }
          <span class="detail">${repair ? format(repair.detail) : left}</span>
          ${
            (repair?.events.length ?? 0) > 3
              ? html`<details class="fold">
                  <summary>The ${repair?.events.length} largest</summary>
                  <ul>${repair?.events.map(({ from_s, detail }) => html`<li>${day(from_s)}${format(detail)}</li>`)}</ul>
                </details>`
              : nothing
          }
        </li>`;
      })}
    </ul>
  </fieldset></details>`;
}

function sentence(words: string): string {
  return words === "" ? "" : `${words.charAt(0).toUpperCase()}${words.slice(1).replace(/\.$/, "")}.`;
}
