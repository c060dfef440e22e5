import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { kindInfo } from "../../shared/quantity/kinds/kinds.ts";
import { knownField } from "../editing/fieldTable/fieldAt.ts";
import type { EditorState } from "../editing/jobEditor.ts";
import { attempt, refusal } from "./attempt.ts";
import type { Form } from "./fieldContext.ts";
import { isBareNumber } from "./isBareNumber.ts";
import { columnsOf, pastedRows, unitOfHead } from "./pastedRows.ts";

/** A list of the job as a table to edit: a row an entry, a column a field of it. */
export interface ListTable {
  /** Of the list: `packs`. */
  readonly path: string;
  /** The entries are no groups but the values of the one column: `path.index`. */
  readonly isOfValues?: boolean;
  /** The job has a list for each column, `path.key.index`, in place of a list of entries, `path.index.key`. */
  readonly isByColumn?: boolean;
  readonly caption: string;
  /** What one entry is: `pack`. */
  readonly entry: string;
  /** What the entry of a row is called. */
  readonly rowName: (index: number) => string;
  readonly columns: readonly { readonly key: string; readonly head: string }[];
  readonly most: number;
  /** The state with an entry more at the end. */
  readonly add: (state: EditorState) => EditorState;
  /** The state with an entry like another one behind it. */
  readonly copy?: (state: EditorState, index: number) => EditorState;
  readonly remove: (state: EditorState, index: number) => EditorState;
  /** The list may not become shorter than this. */
  readonly least?: number;
  /** A cell that is no plain field. */
  readonly cell?: (index: number, key: string) => TemplateResult | undefined;
  /** Below a row, as wide as the table. */
  readonly below?: (index: number) => TemplateResult;
}

/** Cells edited since they got the focus: there the arrow keys move the caret, and Escape undoes. */
const beingEdited = new WeakSet<EventTarget>();

/**
 * The table. Enter goes down, Tab across, arrow keys between cells that are not being edited; Escape undoes the cell; a
 * table pasted from a spreadsheet fills rows from the cell on and makes more where they end.
 */
export function listTable(form: Form, list: ListTable): TemplateResult {
  const { path, columns, caption, entry, rowName, most, least = 0 } = list;
  const count = countOf(list, form.job);
  const change = (what: string, how: (state: EditorState) => EditorState) => attempt(form, path, what, how);
  return html`<div class="list-frame">
    <table class="list-table" @keydown=${(event: KeyboardEvent) => keys(form, event)} @paste=${(event: ClipboardEvent) => paste(form, list, event)}
      @input=${(event: Event) => event.target && beingEdited.add(event.target)} @focusout=${(event: Event) => event.target && beingEdited.delete(event.target)}>
      <caption>${caption} <span class="aside">Type in a cell, or paste rows from a spreadsheet.</span></caption>
      <thead><tr>${columns.map(({ head }) => html`<th scope="col">${head}</th>`)}<th><span class="unseen">Copy or remove</span></th></tr></thead>
      <tbody>
        ${Array.from({ length: count }, (_, i) => {
          const name = rowName(i);
          return html`<tr>
            ${columns.map(
              ({ key, head }, column) => html`<td data-row=${i} data-column=${column}>
                ${list.cell?.(i, key) ?? form.field(cellPath(list, i, key), `${head} of ${name}`)}
              </td>`,
            )}
            <td class="row-buttons">
              ${
                list.copy && count < most
                  ? html`<button type="button" @click=${() => change(`${name} copied`, (state) => list.copy?.(state, i) ?? state)}>Copy<span class="unseen"> ${name}</span></button>`
                  : nothing
              }
              ${
                count > least
                  ? html`<button type="button" @click=${() => change(`${name} removed`, (state) => list.remove(state, i))}>Remove<span class="unseen"> ${name}</span></button>`
                  : nothing
              }
            </td>
          </tr>
          ${list.below ? html`<tr class="row-below"><td colspan=${columns.length + 1}>${list.below(i)}</td></tr>` : nothing}`;
        })}
      </tbody>
    </table>
    <p class="buttons">
      ${count < most ? html`<button type="button" @click=${() => change(`one ${entry} more`, list.add)}>Add ${/^[aeiou]/.test(entry) ? "an" : "a"} ${entry}</button>` : html`<span class="aside">${most} at most.</span>`}
    </p>
    ${refusal(form, path)}
  </div>`;
}

function cellPath({ path, isByColumn, isOfValues }: ListTable, row: number, key: string): string {
  if (isOfValues) return `${path}.${row}`;
  return isByColumn ? `${path}.${key}.${row}` : `${path}.${row}.${key}`;
}

function countOf({ path, isByColumn, columns }: ListTable, job: Job): number {
  const entries = atPath(job, isByColumn ? `${path}.${columns[0].key}` : path);
  return Array.isArray(entries) ? entries.length : 0;
}

/** A bare number below a head with a unit is in that unit, which may not be the field's own. */
function withUnit(path: string, text: string, unit: string | undefined): string {
  const field = knownField(path);
  const hasUnits = field?.type === "quantity" && Object.keys(kindInfo(field.kind).units).length > 0;
  return unit !== undefined && hasUnits && text.trim() !== "" && isBareNumber(text) ? `${text} ${unit}` : text;
}

function placeOf(target: EventTarget | null): { cell: HTMLElement; row: number; column: number } | undefined {
  const cell = target instanceof Element ? target.closest<HTMLElement>("td[data-row]") : null;
  return cell ? { cell, row: Number(cell.dataset["row"]), column: Number(cell.dataset["column"]) } : undefined;
}

const moves: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

function keys(form: Form, event: KeyboardEvent): void {
  const { target } = event;
  const place = placeOf(target);
  if (!place || !(target instanceof HTMLInputElement) || event.ctrlKey || event.altKey || event.metaKey) return;
  if (event.key === "Escape" && beingEdited.has(target)) {
    beingEdited.delete(target);
    form.jobEditor.settle();
    form.jobEditor.undo();
    form.jobEditor.typing.value = undefined;
    event.preventDefault();
    event.stopPropagation();
    return;
  }
  const move =
    event.key === "Enter"
      ? ([event.shiftKey ? -1 : 1, 0] as const)
      : beingEdited.has(target)
        ? undefined
        : moves[event.key];
  if (!move) return;
  const table = place.cell.closest("table");
  const [row, column] = [place.row + move[0], place.column + move[1]];
  const next = table?.querySelector<HTMLElement>(`td[data-row="${row}"][data-column="${column}"] :is(input, select)`);
  event.preventDefault();
  if (!next) return;
  next.focus();
  if (next instanceof HTMLInputElement) next.select();
}

function paste(form: Form, list: ListTable, event: ClipboardEvent): void {
  const place = placeOf(event.target);
  const rows = pastedRows(event.clipboardData?.getData("text/plain") ?? "");
  if (!place || !rows) return;
  event.preventDefault();
  const { path, columns, entry, most } = list;
  const heads = columns.map(({ head }) => head);
  const { places, hasHeader } = columnsOf(rows, heads, place.column);
  const units = hasHeader ? rows[0].map(unitOfHead) : [];
  const wanted = (hasHeader ? rows.slice(1) : rows).slice(0, most - place.row);
  const what = `${wanted.length} ${entry} rows pasted`;
  form.jobEditor.typing.value = undefined;
  attempt(form, path, what, (before) => {
    let state = before;
    wanted.forEach((cells, i) => {
      const row = place.row + i;
      if (row >= countOf(list, state.job)) state = list.add(state);
      cells.forEach((text, k) => {
        const key = columns[places[k] ?? -1]?.key;
        if (key === undefined) return;
        const at = cellPath(list, row, key);
        state = form.typedInto(state, at, withUnit(at, text, units[k]));
      });
    });
    return state;
  });
}
