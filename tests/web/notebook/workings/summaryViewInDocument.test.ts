import { render } from "lit-html";
import { expect, it } from "vitest";
import type { Reading } from "../../../../web/notebook/graph/graph.ts";
import { summaryView } from "../../../../web/notebook/workings/summaryView.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";

const section: AnySection = {
  name: "load",
  title: "Load",
  question: "How heavy?",
  inputs: ["job"],
  compute: () => 12,
  plot: () => [],
  sentence: (mass_kg: number) => `It weighs ${mass_kg} kg.`,
};
const ready: Reading<unknown> = { state: "ready", value: 12, isLate: false };

function shown(of: AnySection, reading: Reading<unknown> = ready, words = "", needsAttention = false) {
  const place = document.createElement("p");
  render(summaryView(of, reading, { words, needsAttention }), place);
  const text = (selector: string) => place.querySelector(selector)?.textContent;
  return { result: text(".result"), strong: text("strong"), plain: text("em") };
}

it("has the result in its shortest form that there is", () => {
  // A number stays on one line with its unit.
  expect(shown(section).result).toBe("It weighs 12\u00a0kg.");
  const short = { ...section, inShort: () => "in short" };
  expect(shown(short).result).toBe("in short");
  expect(shown({ ...short, summary: () => "in a line" }).result).toBe("in a line");
});

it("has no result while there is none, and how it stands all the same", () => {
  const waiting = shown(section, { state: "waiting" }, "calculating …");
  expect(waiting).toEqual({ result: undefined, strong: undefined, plain: "calculating …" });
});

it("stresses only what a person has to look at", () => {
  expect(shown(section, ready, "2 to check.", true)).toMatchObject({ strong: "2 to check.", plain: undefined });
  expect(shown(section)).toMatchObject({ strong: undefined, plain: undefined });
});
