import { signal } from "@preact/signals-core";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { markWaited, WAITED_ms } from "../../../web/notebook/markWaited.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A page that knows its attributes and nothing else. */
function page() {
  const attributes = new Set<string>();
  return {
    attributes,
    setAttribute: (name: string) => void attributes.add(name),
    removeAttribute: (name: string) => void attributes.delete(name),
  };
}

it("marks the page once the last change is long enough ago, and not between keys that follow one another", () => {
  const { attributes, ...marked } = page();
  const load_kg = signal(70);
  markWaited(marked, load_kg);
  vi.advanceTimersByTime(WAITED_ms - 1);
  expect([...attributes]).toEqual([]);
  load_kg.value = 80;
  vi.advanceTimersByTime(WAITED_ms - 1);
  expect([...attributes]).toEqual([]);
  vi.advanceTimersByTime(1);
  expect([...attributes]).toEqual(["data-waited"]);
  load_kg.value = 90;
  expect([...attributes]).toEqual([]);
});
