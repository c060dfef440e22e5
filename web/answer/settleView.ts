import { html, nothing, type TemplateResult } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { type Answer, type Settlement, settlementWords } from "../../sim/index.ts";
import { fieldAt } from "../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../editing/fieldTable/writeAtPath.ts";
import { bandWords } from "./headlineView.ts";

/** For a pack that is only just enough: how far the day may go either way, what to measure, and from which value on it is decided. */
export function settleView(
  answer: Answer,
  index: number | undefined,
  units: UnitHabit,
): TemplateResult | typeof nothing {
  const settlement = index === undefined ? undefined : answer.settlements[index];
  if (index === undefined || !settlement) return nothing;
  const inWords = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, units);
  const [first = [], cost = []] = settlementWords(answer, index);
  return html`<div class="settle">
    <p>
      <strong>Only just.</strong> ${bandWords({ answer, late: "none" }, index, units)} <strong>${inWords(first)}</strong> ${inWords(cost)}
      ${thresholdWords(settlement, units)}
    </p>
  </div>`;
}

/** "Rolling resistance below 0.0129: enough; above 0.0149: not enough." Nothing where no value of it alone decides. */
function thresholdWords({ path, enough, notEnough }: Settlement, units: UnitHabit): string {
  const parts = [
    ...(enough ? [`${enough.side} ${writeAtPath(path, enough.value, units)}: enough`] : []),
    ...(notEnough ? [`${notEnough.side} ${writeAtPath(path, notEnough.value, units)}: not enough`] : []),
  ];
  return parts.length === 0 ? "" : `${fieldAt(path).label} ${parts.join("; ")}.`;
}
