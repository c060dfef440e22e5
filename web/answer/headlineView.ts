import { html, nothing, type TemplateResult } from "lit-html";
import { message, messageIn, quantity } from "../../shared/quantity/message.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { answerWords, leftBetween, type PackAnswer } from "../../sim/index.ts";
import { unbroken } from "../look/unbroken.ts";
import type { ShownAnswer } from "./shownAnswer.ts";

/** The verdict and its sentence, for the pack chosen. A stop takes their place, with two ways out; a failure, with a way to try again. */
export function headlineView(
  { answer, failure, isChecking }: ShownAnswer,
  chosen: number | undefined,
  units: UnitHabit,
  retry: () => void,
): TemplateResult {
  if (!answer) {
    return failure === undefined
      ? html`<h2 class="verdict">Calculating …</h2><p class="say">The packs are being driven over the road.</p>`
      : html`<h2 class="verdict">No answer.</h2>
        <p class="say">${failure.isEmpty ? nothing : "It could not be calculated. "}${failure.words}</p>
        ${failure.isEmpty ? nothing : html`<p class="buttons"><button type="button" @click=${retry}>Try again</button></p>`}`;
  }
  const { headline, sentences, isStop } = answerWords(answer, chosen);
  const stop = isStop ? answer.packs[chosen ?? answer.recommended ?? 0].stop : undefined;
  return html`<div class=${isStop ? "is-stop" : ""}>
    <div class="verdict-line">
      <h2 class="verdict">${messageIn(headline, units)}</h2>
      ${isChecking ? html`<span class="checking" title="The verdict may still change.">checking</span>` : nothing}
    </div>
    <p class="say">${unbroken(sentences.map((sentence) => messageIn(sentence, units)).join(" "))}</p>
    ${
      stop
        ? html`<p class="ways">
          No range or price is shown for this pack. ${stop.ways.map(({ words, path }) => html`<a href="#field-${path.replaceAll(".", "-")}">${messageIn(words, units)}</a> `)}
        </p>`
        : nothing
    }
  </div>`;
}

/** How far the usual day may go either way at ten years in winter; empty while that is not known. */
export function bandWords({ answer }: ShownAnswer, chosen: number | undefined, units: UnitHabit): string {
  const { left, sampled } = (chosen === undefined ? undefined : answer?.packs[chosen]) ?? {};
  if (!answer?.isBandKnown || !left) return "";
  const day = quantity("distance", answer.day_km);
  const home = sampled ? `; home in ${casesOf(sampled)}` : "";
  return messageIn(
    message`At ten years, in winter, the ${day} day ends ${leftBetween(left.tenYearsWinter)}${home}.`,
    units,
  );
}

/** "81 of 100 cases"; never all or none of them unless it is. */
function casesOf({ home_frac }: NonNullable<PackAnswer["sampled"]>): string {
  if (home_frac === 0 || home_frac === 1) return home_frac === 0 ? "none of the cases" : "every case";
  return `${Math.min(99, Math.max(1, Math.round(100 * home_frac)))} of 100 cases`;
}

/** The answer in one line, for whoever hears the page: once it will not be another one. */
export function spokenAnswer(
  { answer, late, isChecking }: ShownAnswer,
  chosen: number | undefined,
  units: UnitHabit,
): string {
  if (!answer || late !== "none" || isChecking) return "";
  const { headline, sentences } = answerWords(answer, chosen);
  return [headline, ...sentences].map((sentence) => messageIn(sentence, units)).join(" ");
}
