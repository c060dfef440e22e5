import { beforeEach, expect, it } from "vitest";
import { hintsAside } from "../../../web/notebook/hintsAside.ts";

document.body.innerHTML = '<main><p class="field"><input><span class="hint">mm</span></p><button>other</button></main>';
const page = document.querySelector("main") as HTMLElement;
const input = document.querySelector("input") as HTMLInputElement;
const hint = document.querySelector(".hint") as HTMLElement;
hint.getBoundingClientRect = () => ({ left: 10, right: 110, top: 20, bottom: 40 }) as DOMRect;
hintsAside(page);

const isAside = () => hint.hasAttribute("data-aside");
const pressEscape = () => input.dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
function point(clientX: number, clientY: number, pointerType = "mouse") {
  const event = new MouseEvent("pointermove", { clientX, clientY, bubbles: true });
  page.dispatchEvent(Object.assign(event, { pointerType }));
}
function leave() {
  document.querySelector("button")?.focus();
}

beforeEach(() => {
  leave();
  input.focus();
});

it("puts a hint aside by Escape until the field is left", () => {
  expect(isAside()).toBe(false);
  pressEscape();
  expect(isAside()).toBe(true);
  point(500, 500);
  expect(isAside()).toBe(true);
  leave();
  expect(isAside()).toBe(false);
});

it("puts a hint aside while a mouse points at what it lies over", () => {
  point(50, 30);
  expect(isAside()).toBe(true);
  point(50, 41);
  expect(isAside()).toBe(false);
  point(50, 30, "touch");
  expect(isAside()).toBe(false);
});
