import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { clientSheet } from "../../../web/sheet/clientSheet.ts";
import { type SheetContent, sheetContent } from "../../../web/sheet/sheetContent.ts";
import { sheetInput } from "./sheetByHand.ts";

const { document } = new JSDOM("").window;
const input = sheetInput();

function sheet(changes: Partial<SheetContent> = {}, answer = input.answer) {
  return clientSheet(document, { ...sheetContent(input), ...changes }, answer, "metric");
}

it("is two pages, each with its number at the foot and the warning on the first", () => {
  const pages = [...sheet().querySelectorAll(".page")];
  expect(pages).toHaveLength(2);
  const [first, second] = pages.map((page) => page.querySelector(".foot")?.textContent ?? "");
  expect(first).toMatch(/a traction pack can kill.*Page 1 of 2$/);
  expect(second).toMatch(/Page 2 of 2$/);
});

it("has no picture for a pack that must not be used, nor where the car does not drive the road", () => {
  const drawn = (element: HTMLElement) => element.querySelectorAll("svg, .caption").length;
  expect(drawn(sheet())).toBe(2);
  expect(drawn(sheet({ isStop: true }))).toBe(0);
  expect(drawn(sheet({}, { ...input.answer, cannot: ["The hill is too steep."] }))).toBe(0);
});

it("has room to write a name where none is in the job, and says that an example is invented", () => {
  const who = (changes: Partial<SheetContent>) => sheet(changes).querySelector(".who")?.textContent ?? "";
  expect(who({ client: "", workshop: "" })).toMatch(/For: _+Workshop: _+/);
  expect(who({ client: "A client", isInvented: false })).toContain("For: A client");
  expect(who({ isInvented: false })).not.toContain("Invented example");
  expect(who({ isInvented: true })).toContain("Invented example");
});

it("has a long use in full on the second page, and a short one on the first only", () => {
  const places = (use: string) =>
    [...sheet({ use }).querySelectorAll(".page")].map((page) => page.textContent?.includes(use) ?? false);
  expect(places("s".repeat(180))).toEqual([true, false]);
  expect(places("l".repeat(181))).toEqual([true, true]);
});

it("takes what is typed into a job as text and never as elements", () => {
  const element = sheet({ title: "<img src=x>", use: "<b>bold</b>" });
  expect(element.querySelectorAll("img, .use b")).toHaveLength(0);
  expect(element.querySelector("h1")?.textContent).toBe("<img src=x>");
});
