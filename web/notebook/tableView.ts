import { html, nothing, type TemplateResult } from "lit-html";
import type { Table } from "./section.ts";
import { unbroken } from "./unbroken.ts";

/** A cell of more letters than this is a sentence and needs room to be read, also where the table has to scroll. */
const LONG_LETTERS = 24;

/** A table of results, in a frame of its own that scrolls sideways on a narrow page. */
export function tableView(table: Table, id: string): TemplateResult {
  const isText = (column: number) => column === 0 || table.columns[column]?.isText === true;
  return html`<div class="table-frame" role="region" aria-labelledby=${id} tabindex="0">
    <table>
      <caption id=${id}>${unbroken(table.caption)}</caption>
      <thead>
        <tr>
          ${table.columns.map(
            ({ title }, i) => html`<th scope="col" class=${isText(i) ? "" : "is-number"}>${unbroken(title)}</th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${table.rows.map(
          (row) =>
            html`<tr>
              ${row.map((cell, i) =>
                i === 0
                  ? html`<th scope="row">${unbroken(cell)}</th>`
                  : html`<td class=${isText(i) ? (cell.length > LONG_LETTERS ? "is-long" : "") : "is-number"}>${unbroken(cell)}</td>`,
              )}
            </tr>`,
        )}
      </tbody>
    </table>
    ${table.note ? html`<p class="table-note">${unbroken(table.note)}</p>` : nothing}
  </div>`;
}
