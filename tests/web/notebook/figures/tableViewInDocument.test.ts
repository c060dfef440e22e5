import { render } from "lit-html";
import { expect, it } from "vitest";
import { tableView } from "../../../../web/notebook/figures/tableView.ts";
import type { Table } from "../../../../web/sections/parts/section.ts";

const table: Table = {
  caption: "Packs",
  columns: [{ title: "Pack" }, { title: "Mass" }, { title: "Why", isText: true }],
  rows: [
    ["small", "120 kg", "x".repeat(24)],
    ["large", "<b>240 kg", "x".repeat(25)],
  ],
};

function shown(of: Table) {
  const place = document.createElement("div");
  render(tableView(of, "packs-table-1"), place);
  const classes = (selector: string) => [...place.querySelectorAll(selector)].map((each) => [...each.classList]);
  return { place, classes };
}

it("sets numbers flush right and texts not; the first column is the head of its row", () => {
  const { place, classes } = shown(table);
  expect(classes("thead th")).toEqual([[], ["is-number"], []]);
  expect([...place.querySelectorAll("tbody th")].map(({ textContent }) => textContent)).toEqual(["small", "large"]);
  expect(classes("tbody tr:first-child td")).toEqual([["is-number"], []]);
});

it("gives a cell of more than 24 letters the room of a sentence", () => {
  expect(shown(table).classes("tbody td:last-child")).toEqual([[], ["is-long"]]);
});

it("repeats in each cell the words of its column, for a page too narrow for columns", () => {
  const cells = [...shown(table).place.querySelectorAll<HTMLElement>("tbody td")];
  expect(cells.map(({ dataset }) => dataset["head"])).toEqual(["Mass", "Why", "Mass", "Why"]);
});

it("has a name, a note only where there is one, and no HTML out of what was typed", () => {
  const { place } = shown(table);
  expect(place.querySelector(".table-note")).toBeNull();
  expect(place.querySelector("b")).toBeNull();
  const frame = place.querySelector(".table-frame");
  expect(place.querySelector(`#${frame?.getAttribute("aria-labelledby")}`)?.textContent).toBe("Packs");
  expect(shown({ ...table, note: "As weighed." }).place.querySelector(".table-note")?.textContent).toBe("As weighed.");
});
