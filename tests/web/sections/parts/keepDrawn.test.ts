import { expect, it } from "vitest";
import { keepDrawn } from "../../../../web/sections/parts/keepDrawn.ts";

it("draws anew only where it is asked for other things than last", () => {
  const asked: unknown[][] = [];
  const drawn = keepDrawn((...things: readonly unknown[]) => {
    asked.push([...things]);
    return { things };
  });
  const log = { title: "log" };
  const first = drawn(log, Number.NaN);
  expect(drawn(log, Number.NaN)).toBe(first);
  expect(drawn({ ...log }, Number.NaN)).not.toBe(first);
  expect(drawn(log, Number.NaN)).not.toBe(first); // only the last is kept
  const one = drawn(log);
  expect(drawn(log, undefined)).not.toBe(one);
  expect(asked).toHaveLength(5);
});
