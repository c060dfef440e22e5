import { beforeEach, expect, it } from "vitest";
import { keepFocus } from "../../../web/notebook/keepFocus.ts";

const row = (name: string) =>
  `<li id="${name}"><button>Up</button><button id="${name}-out">Remove<span class="unseen"> ${name}</span></button></li>`;

beforeEach(() => {
  document.body.innerHTML = `<main><section tabindex="-1"><ul>${["a", "b", "c"].map(row).join("")}</ul><button id="add">Add</button></section></main>`;
  keepFocus(document.querySelector("main") as HTMLElement);
});

/** Presses the button that takes a row out, takes the row out, and says where the keyboard stands then. */
async function takeOut(name: string, wait_ms = 0): Promise<string | undefined> {
  const button = document.querySelector<HTMLElement>(`#${name}-out`);
  button?.focus();
  const press = new MouseEvent("click", { bubbles: true });
  // In a browser an event has the time of the page's own clock, here it has another one.
  Object.defineProperty(press, "timeStamp", { value: performance.now() - wait_ms });
  button?.dispatchEvent(press);
  document.querySelector(`#${name}`)?.remove();
  await Promise.resolve(); // the page is observed between two tasks
  const { activeElement } = document;
  return activeElement?.id || activeElement?.tagName;
}

it("goes on with the same button of the next row, and of the last where the last one went", async () => {
  expect(await takeOut("a")).toBe("b-out");
  expect(await takeOut("c")).toBe("b-out");
});

it("goes to what adds a row where none is left, and to the section where no button is", async () => {
  document.querySelector("#a")?.remove();
  document.querySelector("#b")?.remove();
  expect(await takeOut("c")).toBe("add");
  document.querySelector("ul")?.insertAdjacentHTML("beforeend", row("d"));
  document.querySelector("#add")?.remove();
  expect(await takeOut("d")).toBe("SECTION");
});

it("passes over what is not seen or cannot be pressed", async () => {
  document.querySelector("#b")?.setAttribute("hidden", "");
  expect(await takeOut("a")).toBe("c-out");
});

it("leaves the keyboard where somebody put it meanwhile, and after five seconds", async () => {
  document
    .querySelector("#a-out")
    ?.addEventListener("click", () => document.querySelector<HTMLElement>("#add")?.focus());
  expect(await takeOut("a")).toBe("add");
  expect(await takeOut("b", 5100)).toBe("BODY");
});
