import { signal } from "@preact/signals-core";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { announceWhenSettled } from "../../../web/notebook/announceWhenSettled.ts";

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

it("announces only the last of several answers, once it has stood for a moment and is another one", () => {
  const answer = signal("");
  const said: string[] = [];
  announceWhenSettled(answer, (words) => said.push(words));
  const pass = (words: string, wait_ms: number) => {
    answer.value = words;
    vi.advanceTimersByTime(wait_ms);
  };
  pass("40 km", 5000); // as the page opened
  pass("41 km", 1000);
  pass("42 km", 1400);
  expect(said).toEqual([]);
  pass("42 km", 200);
  expect(said).toEqual(["42 km"]);
  pass("50 km", 1000);
  pass("42 km", 5000); // there and back
  expect(said).toEqual(["42 km"]);
  pass("50 km", 1000);
  pass("", 5000); // gone before it settled
  expect(said).toEqual(["42 km"]);
});
