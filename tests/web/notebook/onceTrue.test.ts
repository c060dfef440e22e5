import { signal } from "@preact/signals-core";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { onceTrue } from "../../../web/notebook/onceTrue.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Whether a wait is over by now. */
async function isOver(wait: Promise<void>): Promise<boolean> {
  let over = false;
  wait.then(() => {
    over = true;
  });
  await vi.advanceTimersByTimeAsync(0);
  return over;
}

it("is over when it becomes so, at once where it is so already", async () => {
  const left_km = signal(-1);
  const wait = onceTrue(() => left_km.value >= 0);
  expect(await isOver(wait)).toBe(false);
  left_km.value = 2;
  expect(await isOver(wait)).toBe(true);
  expect(await isOver(onceTrue(() => left_km.value >= 0))).toBe(true);
});

it("does not wait for ever for what does not come", async () => {
  const wait = onceTrue(() => false);
  await vi.advanceTimersByTimeAsync(9_999);
  expect(await isOver(wait)).toBe(false);
  await vi.advanceTimersByTimeAsync(1);
  expect(await isOver(wait)).toBe(true);
});
