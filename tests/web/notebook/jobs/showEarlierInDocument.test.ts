import { signal } from "@preact/signals-core";
import { beforeEach, expect, it } from "vitest";
import type { Looked } from "../../../../web/notebook/jobs/earlierLook.ts";
import { showEarlier } from "../../../../web/notebook/jobs/showEarlier.ts";
import { MOMENT_ms } from "../../../support/jobsPlace.ts";

const looked: Looked = {
  version: {
    number: 3,
    startedAt_ms: MOMENT_ms,
    endedAt_ms: MOMENT_ms,
    reason: "Usual day",
    edits: 1,
    isPresent: false,
  },
  isPassed: false,
};

beforeEach(() => {
  document.body.innerHTML = `<main>
    <header class="masthead"><div class="tools"><button disabled>Undo</button><button id="redo">Redo</button></div></header>
    <button id="look">Look at it</button>
    <div class="given"><div data-place="given"><input id="load"></div></div></main>`;
});

/** The page with its band, where nothing is looked at yet. */
function page() {
  const now = signal<Looked | undefined>(undefined);
  const taken: number[] = [];
  const look = {
    looked: now,
    open: async () => {},
    back: () => {
      now.value = undefined;
    },
    takeUp: async () => {
      taken.push(now.value?.version.number ?? 0);
      now.value = undefined;
    },
  };
  let attempted: Promise<unknown> = Promise.resolve();
  const main = document.querySelector("main") as HTMLElement;
  const closeAgain = showEarlier(main, look, (work) => {
    attempted = work();
  });
  const press = (words: string) =>
    [...document.querySelectorAll("button")].find(({ textContent }) => textContent === words)?.click();
  const isClosed = (id: string) => document.querySelector(`#${id}`)?.closest("fieldset")?.disabled ?? false;
  return {
    main,
    now,
    taken,
    closeAgain,
    press,
    isClosed,
    attempted: () => attempted,
    focus: () => document.activeElement,
  };
}

it("closes the fields while an earlier version is looked at and brings the keyboard to the band, and back", () => {
  const { main, now, press, isClosed, focus } = page();
  expect([isClosed("load"), main.hasAttribute("data-looking")]).toEqual([false, false]);
  document.querySelector<HTMLElement>("#look")?.focus();
  now.value = looked;
  expect([isClosed("load"), main.hasAttribute("data-looking")]).toEqual([true, true]);
  expect(focus()?.className).toBe("looking-body");
  now.value = { ...looked, version: { ...looked.version, number: 2 } }; // another one, from within the band
  press("Back to the job as it is now");
  expect([isClosed("load"), main.hasAttribute("data-looking")]).toEqual([false, false]);
  expect(focus()?.id).toBe("look");
});

it("makes the version the job, and goes on at the first tool that can be pressed", async () => {
  const { now, press, taken, attempted, focus } = page();
  now.value = looked;
  press("Make this the job");
  await attempted();
  expect(taken).toEqual([3]);
  expect(focus()?.id).toBe("redo");
});

it("closes what came to the page meanwhile, and nothing while the job itself is on it", () => {
  const { main, now, closeAgain, isClosed } = page();
  const more = '<section class="chapter"><div data-place="given"><input id="day"></div></section>';
  main.insertAdjacentHTML("beforeend", more);
  closeAgain();
  expect(isClosed("day")).toBe(false);
  now.value = looked;
  main.insertAdjacentHTML("beforeend", more.replace("day", "later"));
  expect([isClosed("day"), isClosed("later")]).toEqual([true, false]);
  closeAgain();
  expect(isClosed("later")).toBe(true);
});
