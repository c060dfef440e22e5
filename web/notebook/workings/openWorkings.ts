import { computed, effect, type ReadonlySignal, type Signal } from "@preact/signals-core";
import type { AnySection } from "../../sections/parts/section.ts";
import { scrollToTop } from "./scrollToTop.ts";

/** Which workings are open. What is closed is neither drawn nor kept up to date, so that the answer stays quick. */
export interface OpenWorkings {
  isOpen(name: string): boolean;
  /** Whether all of them are. */
  readonly areAllOpen: ReadonlySignal<boolean>;
  openAll(): void;
  closeAll(): void;
  /** Opens what `id` lies in, where it lies in a working at all: a working itself, a field or a figure. */
  openFor(id: string): void;
}

/** Follows the heads of the workings in `page`, and links into them, which open what they lead to; `open` says which are. */
export function openWorkings(
  page: HTMLElement,
  sections: readonly AnySection[],
  open: Signal<ReadonlySet<string>>,
): OpenWorkings {
  const names = sections.map(({ name }) => name);
  open.value = new Set(rememberedNames().filter((name) => names.includes(name)));
  effect(() => remember([...open.value]));
  const put = (name: string, isOpen: boolean) => {
    const others = [...open.peek()].filter((each) => each !== name);
    open.value = new Set(isOpen ? [...others, name] : others);
  };
  const openFor = (id: string) => {
    const name = sectionOf(page, sections, id);
    if (name !== undefined && !open.peek().has(name)) put(name, true);
  };

  for (const name of names) {
    const section = page.querySelector<HTMLElement>(`#${name}`);
    const head = section?.querySelector<HTMLButtonElement>(`[data-opens="${name}"]`);
    const body = section?.querySelector<HTMLElement>(`#${name}-body`);
    head?.addEventListener("click", () => put(name, !open.peek().has(name)));
    section?.querySelector(".summary")?.addEventListener("click", () => put(name, !open.peek().has(name)));
    effect(() => {
      const isOpen = open.value.has(name);
      head?.setAttribute("aria-expanded", String(isOpen));
      section?.toggleAttribute("data-open", isOpen);
      if (body) body.hidden = !isOpen;
    });
  }

  // What a link leads to is opened before the browser looks for it, so that its own way of going there works.
  page.addEventListener(
    "click",
    (event) => {
      const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href^="#"]') : null;
      if (link) openFor(decodeURIComponent(link.hash.slice(1)));
    },
    { capture: true },
  );
  addEventListener("hashchange", () => followHash(openFor));
  followHash(openFor);

  return {
    isOpen: (name) => open.value.has(name),
    areAllOpen: computed(() => names.every((name) => open.value.has(name))),
    openAll() {
      open.value = new Set(names);
    },
    closeAll() {
      open.value = new Set();
    },
    openFor,
  };
}

/** Kept in this browser, so that a reload and another tab show what was open. Which ones are open says nothing of a job. */
const KEY = "openWorkings";

function rememberedNames(): readonly string[] {
  try {
    return (localStorage.getItem(KEY) ?? "").split(" ");
  } catch {
    return []; // a browser that keeps nothing for this page
  }
}

function remember(names: readonly string[]): void {
  try {
    localStorage.setItem(KEY, names.join(" "));
  } catch {
    // As above: they are closed again after a reload.
  }
}

function followHash(openFor: (id: string) => void): void {
  if (location.hash.length <= 1) return;
  const id = decodeURIComponent(location.hash.slice(1));
  openFor(id);
  const element = document.getElementById(id);
  if (element) scrollToTop(element);
}

/** The working that an id lies in. Fields of a closed one are not on the page, so they are known by their path. */
function sectionOf(page: HTMLElement, sections: readonly AnySection[], id: string): string | undefined {
  const element = document.getElementById(id);
  if (element && page.contains(element)) return element.closest(".working")?.id;
  const field = /^field-(.*)$/.exec(id)?.[1];
  if (field === undefined) return undefined;
  return sections.find(({ fields = [] }) =>
    fields.some((path) => {
      const beginning = path.replaceAll(".", "-");
      return field === beginning || field.startsWith(`${beginning}-`);
    }),
  )?.name;
}
