import { render } from "lit-html";
import { expect, it, vi } from "vitest";
import { bandWords, headlineView, spokenAnswer } from "../../../web/answer/headlineView.ts";
import type { ShownAnswer } from "../../../web/answer/shownAnswer.ts";
import { inventedUse } from "../../support/inventedCandidate.ts";
import { answered } from "./answeredByHand.ts";

function drawn(shown: ShownAnswer, chosen?: number, retry = () => {}) {
  const main = document.querySelector("main") as HTMLElement;
  render(headlineView(shown, chosen, "metric", retry), main);
  return main;
}

const plain = (words: string) => words.replace(/\s/g, " ");

it("says that it is being calculated, or why it could not be and how to try again", () => {
  expect(drawn({ late: "all" }).querySelector("h2")?.textContent).toBe("Calculating …");
  const retry = vi.fn();
  const failed = drawn({ late: "all", failure: { words: "The worker stopped.", isEmpty: false } }, undefined, retry);
  expect(failed.textContent).toContain("It could not be calculated. The worker stopped.");
  failed.querySelector("button")?.click();
  expect(retry).toHaveBeenCalledTimes(1);
});

it("offers no second try where a field is empty, since the same would come", () => {
  const empty = drawn({ late: "all", failure: { words: "Fill in the usual day.", isEmpty: true } });
  expect(empty.querySelector("button")).toBeNull();
  expect(empty.textContent).not.toContain("could not be calculated");
});

it("leads out of a stop to fields, and shows neither range nor price", () => {
  const { controller } = inventedUse();
  const answer = answered([4], 0, { controller: { ...controller, max_V: 1 } });
  const main = drawn({ answer, late: "none" }, 0);
  expect(main.querySelector(".is-stop")).not.toBeNull();
  expect(main.textContent).toContain("No range or price is shown for this pack.");
  const ways = [...main.querySelectorAll("a")].map((link) => link.getAttribute("href") ?? "");
  expect(ways.length).toBeGreaterThan(0);
  for (const way of ways) expect(way).toMatch(/^#field-[\w-]+$/);
});

it("says quietly that a verdict is being checked while it may still change, outside the heading, and nothing else", () => {
  const enough = answered([8]);
  const checked = drawn({ answer: enough, late: "none", isChecking: true }, 0);
  expect(checked.querySelector(".checking")?.textContent).toBe("checking");
  const heading = checked.querySelector("h2")?.textContent;
  expect(heading).not.toContain("checking");
  // No live region: it is not read out at every change.
  expect(checked.querySelector("[aria-live], [role=status]")).toBeNull();
  const settled = drawn({ answer: enough, late: "none", isChecking: false }, 0);
  expect(settled.querySelector(".checking")).toBeNull();
  expect(settled.querySelector("h2")?.textContent).toBe(heading);
});

it("is read out once it will not be another one", () => {
  const enough = answered([8]);
  expect(spokenAnswer({ answer: enough, late: "none", isChecking: true }, 0, "metric")).toBe("");
  expect(spokenAnswer({ answer: enough, late: "none" }, 0, "metric")).toMatch(/^8 kWh: /);
});

// 4.4 kWh go 11 km at ten years in winter, give or take a tenth: of a day of 10 km that leaves 0.1 km short to 2.1 km.
const answer = answered([4.4]);
const sampled = (home_frac: number) => ({
  ...answer,
  packs: answer.packs.map((pack) => ({ ...pack, sampled: { variants: 200, home_frac } })),
});

it("says how far it may go either way, and in how many of the variants it gets home", () => {
  const band = (of: typeof answer) => plain(bandWords({ answer: of, late: "none" }, 0, "metric"));
  expect(band(answer)).toBe("At ten years, in winter, the 10 km day ends between 1 km short and 2 km left.");
  expect(band(sampled(0.812))).toContain("; home in 81 of 100 cases.");
  // Neither all nor none of them, however near it is.
  expect(band(sampled(0.999))).toContain("home in 99 of 100 cases");
  expect(band(sampled(0.001))).toContain("home in 1 of 100 cases");
  expect(band(sampled(1))).toContain("home in every case");
  expect(band(sampled(0))).toContain("home in none of the cases");
});

it("has no band where none is known, and speaks no answer that is late", () => {
  expect(bandWords({ answer: { ...answer, isBandKnown: false }, late: "bands" }, 0, "metric")).toBe("");
  expect(bandWords({ answer, late: "none" }, undefined, "metric")).toBe("");
  expect(spokenAnswer({ answer, late: "all" }, 0, "metric")).toBe("");
  expect(spokenAnswer({ answer, late: "none" }, 0, "metric")).toMatch(/^4\.4 kWh: only just\. /);
});
