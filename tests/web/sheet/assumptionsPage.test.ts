import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { assumptionsPage } from "../../../web/sheet/assumptionsPage.ts";
import { makerOf } from "../../../web/sheet/element.ts";
import type { SheetContent } from "../../../web/sheet/sheetContent.ts";

const make = makerOf(new JSDOM("").window.document);

/** A page of so many values, beside a use in so many letters. */
function page(values: number, letters = 0): HTMLElement {
  const assumptions = Array.from({ length: values }, (_, i) => [`Value ${i}`, "1", "± 10 %", "guessed"]);
  const content = { title: "A car", date: "29 November 2026", assumptions } as unknown as SheetContent;
  return assumptionsPage(make, content, "u".repeat(letters));
}
const rows = (of: HTMLElement) => of.querySelectorAll("tbody tr").length;

it("has every value while there is room for thirty, and says how many more there are", () => {
  expect(rows(page(30))).toBe(30);
  expect(page(30).textContent).not.toContain("more values");
  expect(rows(page(37))).toBe(30);
  expect(page(37).textContent).toContain("And 7 more values");
});

it("gives up a row for every ninety letters of the client's words that it holds", () => {
  expect(rows(page(40, 90))).toBe(29);
  // 181 letters take three rows.
  expect(rows(page(40, 181))).toBe(27);
  expect(page(40, 181).textContent).toContain("And 13 more values");
  expect(page(40, 181).textContent).toContain(`“${"u".repeat(181)}”`);
});

it("keeps the first rows, which nobody measured", () => {
  const first = page(37).querySelector("tbody th")?.textContent;
  expect(first).toBe("Value 0");
  expect(page(37).textContent).not.toContain("Value 30");
});
