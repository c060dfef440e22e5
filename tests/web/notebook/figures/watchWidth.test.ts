import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { watchWidth } from "../../../../web/notebook/figures/watchWidth.ts";

/** Whoever listens to the window, by what for, and to the size of the place. */
const heard = new Map<string, () => void>();
let resized: () => void = () => {};

beforeEach(() => {
  heard.clear();
  vi.stubGlobal("addEventListener", (name: string, listen: () => void) => heard.set(name, listen));
  vi.stubGlobal("requestAnimationFrame", (run: () => void) => run());
  vi.stubGlobal(
    "ResizeObserver",
    class {
      constructor(listen: () => void) {
        resized = listen;
      }
      observe() {}
    },
  );
});
afterEach(() => vi.unstubAllGlobals());

/** The width to draw for in a place of so many pixels, and how often all that waited was drawn at once. */
function watched(clientWidth: number) {
  const body = { clientWidth };
  let finished = 0;
  const turns = { take: () => {}, finish: () => void finished++ };
  const width_px = watchWidth(body as HTMLElement, turns);
  return { body, width_px, finished: () => finished };
}

it("follows the place down to whole steps of 20, from 320 to 1200", () => {
  expect([100, 339, 340, 999, 5000].map((px) => watched(px).width_px.value)).toEqual([320, 320, 340, 980, 1200]);
  const { body, width_px } = watched(640);
  body.clientWidth = 719;
  resized();
  expect(width_px.value).toBe(700);
});

it("is the paper's while the page is printed, with all drawn before that, and the place's again after it", () => {
  const { width_px, finished } = watched(1000);
  heard.get("beforeprint")?.();
  // A4 is 210 mm wide: 180 mm between margins of 15 mm are 680 px at 96 to the inch.
  expect([width_px.value, finished()]).toEqual([680, 1]);
  resized();
  expect(width_px.value).toBe(680);
  heard.get("afterprint")?.();
  expect([width_px.value, finished()]).toEqual([1000, 1]);
});
