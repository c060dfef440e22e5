import { expect, it } from "vitest";
import { factsOf, makerOf, tableOf } from "../../../web/sheet/element.ts";
import { drawing } from "../../support/drawing.ts";

const make = makerOf(drawing().document);

it("makes text of whatever is typed into a job", () => {
  expect(make("p", "note", "<b>bold</b>", undefined, make("em", "", "x")).outerHTML).toBe(
    '<p class="note">&lt;b&gt;bold&lt;/b&gt;<em>x</em></p>',
  );
});

it("makes a table whose first and last columns are words", () => {
  const table = tableOf(make, ["pack", "kg", "verdict"], [{ cells: ["A", "90", "enough"], isChosen: true }]);
  expect([...table.querySelectorAll("tbody tr.is-chosen > *")].map((cell) => cell.getAttribute("class"))).toEqual([
    "is-text",
    "is-number",
    "is-text",
  ]);
  expect(table.querySelector("tbody th")?.textContent).toBe("A");
});

it("leaves out terms of which there is nothing to say", () => {
  const list = factsOf(make, [
    ["Car", "Saloon"],
    ["Engine", undefined],
    ["Gearbox", ""],
  ]);
  expect([...list.children].map((child) => child.textContent)).toEqual(["Car", "Saloon"]);
});
