import { html, nothing, type TemplateResult } from "lit-html";
import { unbroken } from "../../look/unbroken.ts";
import type { Table } from "../../sections/parts/section.ts";

/** A cell of more letters than this is a sentence and needs room to be read, also where the table has to scroll. */
const LONG_LETTERS = 24;

/**
 * A table of results, in a frame of its own that scrolls sideways where it must. A narrow page reads its rows downwards, each
 * value below the words of its column; the roles say that it is a table all the same.
 */
export function tableView(table: Table, id: string): TemplateResult {
  const isText = (column: number) => column === 0 || table.columns[column]?.isText === true;
  return html`<div class="table-frame" role="region" aria-labelledby=${id} tabindex="0">
    <table role="table">
      <caption id=${id}>${unbroken(table.caption)}</caption>
      <thead role="rowgroup">
        <tr role="row">
          ${table.columns.map(
            ({ title }, i) =>
              html`<th scope="col" role="columnheader" class=${isText(i) ? "" : "is-number"}>${unbroken(title)}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${table.rows.map(
          (row) =>
            html`<tr role="row">
              ${row.map((cell, i) =>
                i === 0
                  ? html`<th scope="row" role="rowheader">${unbroken(cell)}</th>`
                  : html`<td
                      role="cell"
                      class="${isText(i) ? "" : "is-number"} ${cell.length > LONG_LETTERS ? "is-long" : ""}"
                      data-head=${table.columns[i]?.title ?? ""}
                    >${unbroken(cell)}</td>`,
              )}
            </tr>`,
        )}
      </tbody>
    </table>
    ${table.note ? html`<p class="table-note">${unbroken(table.note)}</p>` : nothing}
  </div>`;
}
