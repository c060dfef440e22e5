import { expect, it } from "vitest";
import type { Steps } from "../../../sim/index.ts";
import { stepped } from "../../../web/worker/stepped.ts";

function* countTo(last: number, seen: number[]): Steps<string> {
  for (let i = 1; i <= last; i++) {
    seen.push(i);
    yield i / last;
  }
  return "done";
}

it("runs to the end and tells the share done", async () => {
  const told: number[] = [];
  const never = () => false;
  expect(await stepped(countTo(4, []), (share) => told.push(share), never, 0)).toEqual({ value: "done" });
  expect(told).toEqual([0.25, 0.5, 0.75, 1]);
});

it("lets a message in between two slices, and gives up when it says so", async () => {
  const seen: number[] = [];
  let isCancelled = false;
  setTimeout(() => {
    isCancelled = true;
  });
  const answer = await stepped(
    countTo(1000, seen),
    () => {},
    () => isCancelled,
    0,
  );
  expect(answer).toBeUndefined();
  expect(seen.length).toBeLessThan(1000);
});
