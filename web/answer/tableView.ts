import { html, nothing, type TemplateResult } from "lit-html";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { AnswerTable } from "./answerTable.ts";

/** The packs side by side; the chosen one is marked, and the name of each chooses it. `more` stands at the head. */
export function tableView(
  { rows, hasPinned, refillAt, pricesIn }: AnswerTable,
  chosen: number | undefined,
  units: UnitHabit,
  choose: (index: number) => void,
  more: TemplateResult | typeof nothing,
): TemplateResult {
  const unit = units === "metric" ? "km" : "miles";
  return html`<table class="answer-table">
    <caption class="unseen">The packs side by side</caption>
    <thead>
      <tr>
        <th rowspan="2" scope="col" class="is-text">Pack${more}</th>
        <th rowspan="2" scope="col" class="weight">Weight</th>
        <th colspan=${hasPinned ? 4 : 3} scope="colgroup" class="group">${unit} left after a usual day</th>
        <th rowspan="2" scope="col" class="refill" title=${refillAt ? `The usual day put back at ${refillAt.place}` : nothing}>
          Refill${refillAt ? html`<br /><span class="at">at ${refillAt.power}</span>` : nothing}
        </th>
        ${
          pricesIn === undefined
            ? nothing
            : html`<th rowspan="2" scope="col" class="price">Price${pricesIn === "" ? nothing : html`<br /><span class="at">${pricesIn}</span>`}</th>`
        }
        <th rowspan="2" scope="col" class="is-text">Verdict</th>
      </tr>
      <tr>
        <th scope="col">new</th>
        <th scope="col">winter</th>
        <th scope="col">ten years, winter</th>
        ${hasPinned ? html`<th scope="col" class="pinned">pinned</th>` : nothing}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ index, name, isAskedFor, weight, left, pinned, refill, price, verdict, stop }) =>
          html`<tr class=${index === chosen ? "is-chosen" : ""} aria-current=${index === chosen ? "true" : nothing}>
            <th scope="row" class="is-text">
              <button type="button" title="Show this pack" @click=${() => choose(index)}>${name}</button>${isAskedFor ? html` <span class="at">asked for</span>` : nothing}
            </th>
            <td class="weight">${weight}</td>
            ${
              stop === undefined
                ? html`${left.map((cell) => html`<td class="left">${cell}</td>`)}${hasPinned ? html`<td class="pinned">${pinned}</td>` : nothing}`
                : html`<td class="is-text is-stop" colspan=${hasPinned ? 5 : 4}>${stop}</td>`
            }
            ${stop === undefined ? html`<td class="refill">${refill}</td>` : nothing}
            ${pricesIn === undefined ? nothing : html`<td class="price">${price}</td>`}
            <td class="is-text ${stop === undefined ? "" : "is-stop"}">${verdict}</td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}
