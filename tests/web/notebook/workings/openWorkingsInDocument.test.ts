import { signal } from "@preact/signals-core";
import { beforeEach, expect, it } from "vitest";
import { openWorkings } from "../../../../web/notebook/workings/openWorkings.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";

const section = (name: string, fields: readonly string[]): AnySection => ({
  name,
  fields,
  title: name,
  question: "",
  inputs: ["job"],
  compute: () => 0,
  plot: () => [],
  sentence: () => "",
});
const sections = [section("car", ["vehicle.load_kg"]), section("motor", ["motor"])];

/** The page with its two workings, a figure in the second, and links to somewhere in them. */
function page() {
  document.body.innerHTML = `<main>${sections
    .map(
      ({ name }) =>
        `<section id="${name}" class="working"><button data-opens="${name}"></button><p class="summary"></p><div id="${name}-body"></div></section>`,
    )
    .join("")}
    <a id="toFigure" href="#figure">figure</a><a id="toField" href="#field-vehicle-load_kg">field</a>
    <a id="toOther" href="#field-vehicle-load_kgs">other</a></main>`;
  const main = document.querySelector("main") as HTMLElement;
  const figure = document.createElement("figure");
  figure.id = "figure";
  document.querySelector("#motor-body")?.append(figure);
  const open = signal<ReadonlySet<string>>(new Set());
  const workings = openWorkings(main, sections, open);
  const click = (selector: string) => document.querySelector<HTMLElement>(selector)?.click();
  return { workings, click, open: () => [...open.value].sort() };
}

beforeEach(() => localStorage.clear());

it("opens and closes a working by its head and by its summary, and says so in the document", () => {
  const { click, open, workings } = page();
  const state = () => ["aria-expanded"].map((name) => document.querySelector("#car button")?.getAttribute(name));
  const isHidden = () => document.querySelector<HTMLElement>("#car-body")?.hidden;
  expect([open(), state(), isHidden()]).toEqual([[], ["false"], true]);
  click("#car button");
  expect([open(), state(), isHidden()]).toEqual([["car"], ["true"], false]);
  expect(workings.areAllOpen.value).toBe(false);
  click("#car .summary");
  expect([open(), state(), isHidden()]).toEqual([[], ["false"], true]);
});

it("opens the working that a link leads into: by what stands in it, or by the path of a field that is not drawn yet", () => {
  const { click, open } = page();
  click("#toFigure");
  expect(open()).toEqual(["motor"]);
  click("#toField");
  expect(open()).toEqual(["car", "motor"]);
  click("#toField"); // not closed by a second press
  expect(open()).toEqual(["car", "motor"]);
});

it("opens none for a path that only begins like one of its own", () => {
  const { click, open } = page();
  click("#toOther");
  expect(open()).toEqual([]);
});

it("opens with the page what was open before, and nothing of another edition's", () => {
  page().workings.openAll();
  expect(page().open()).toEqual(["car", "motor"]);
  localStorage.setItem("openWorkings", "motor chassis");
  const { open, workings } = page();
  expect(open()).toEqual(["motor"]);
  workings.closeAll();
  expect(page().open()).toEqual([]);
});
