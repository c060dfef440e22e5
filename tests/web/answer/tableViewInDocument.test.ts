import { html, render } from "lit-html";
import { expect, it, vi } from "vitest";
import type { AnswerTable } from "../../../web/answer/answerTable.ts";
import { tableView } from "../../../web/answer/tableView.ts";

type Row = AnswerTable["rows"][number];

function row(index: number, changes: Partial<Row> = {}): Row {
  const left: Row["left"] = ["30", "10", "2 short"];
  const others = { weight: "50 kg", left, pinned: "3", refill: "2 h", price: "9000", verdict: "enough" };
  return { index, name: `Pack ${index}`, ...others, ...changes };
}

function drawn(table: AnswerTable, chosen?: number, choose: (index: number) => void = () => {}) {
  const main = document.querySelector("main") as HTMLElement;
  render(tableView(table, chosen, "metric", choose, html``), main);
  return main;
}

/** Columns that each row of the body takes, heads of rows included. */
const widths = (main: HTMLElement) =>
  [...main.querySelectorAll("tbody tr")].map((each) =>
    [...each.querySelectorAll<HTMLTableCellElement>("th, td")].reduce((sum, { colSpan }) => sum + colSpan, 0),
  );

it("has rows of one width, with a stop in one of them, a price or not, a pinned state or not", () => {
  const rows = [row(0), row(1, { stop: "Full, this pack has too many volts." })];
  // Pack, weight, three conditions, refill, verdict.
  expect(widths(drawn({ rows, hasPinned: false }))).toEqual([7, 7]);
  expect(widths(drawn({ rows, hasPinned: true }))).toEqual([8, 8]);
  expect(widths(drawn({ rows, hasPinned: true, pricesIn: "EUR" }))).toEqual([9, 9]);
});

it("shows no kilometres for a stop", () => {
  const main = drawn({ rows: [row(0, { stop: "Too many volts.", verdict: "stop" })], hasPinned: true });
  expect(main.querySelectorAll("tbody .left, tbody .pinned, tbody .refill")).toHaveLength(0);
  expect(main.querySelector("tbody")?.textContent).toContain("Too many volts.");
});

it("chooses a pack by its place in the job, and marks the chosen one in words for who hears it", () => {
  const choose = vi.fn();
  const main = drawn({ rows: [row(4), row(2)], hasPinned: false }, 2, choose);
  const rows = [...main.querySelectorAll("tbody tr")];
  expect(rows.map((each) => each.getAttribute("aria-current"))).toEqual([null, "true"]);
  main.querySelector("button")?.click();
  expect(choose).toHaveBeenCalledExactlyOnceWith(4);
});
