import { describe, expect, it } from "vitest";
import { createTurns } from "../../../../web/notebook/figures/turns.ts";

/** Turns that the test calls itself; each look at the clock finds it `step_ms` on. */
function byHand(step_ms = 1000) {
  const coming: (() => void)[] = [];
  const told: boolean[] = [];
  let clock_ms = 0;
  const turns = createTurns(
    (isWaiting) => told.push(isWaiting),
    (run) => coming.push(run),
    () => (clock_ms += step_ms),
  );
  return { turns, told, tick: () => coming.shift()?.(), waiting: () => coming.length };
}

describe("turns", () => {
  it("does as many short pieces in a turn as fit in", () => {
    const { turns, tick, waiting } = byHand(6);
    const done: number[] = [];
    for (const each of [1, 2, 3, 4, 5]) {
      turns.take(
        String(each),
        () => each,
        () => done.push(each),
      );
    }
    tick();
    expect(done).toEqual([1, 2, 3]);
    expect(waiting()).toBe(1);
    tick();
    expect(done).toEqual([1, 2, 3, 4, 5]);
    expect(waiting()).toBe(0);
  });

  it("says which turn is the first of several, which waits for a frame", () => {
    const firsts: boolean[] = [];
    const coming: (() => void)[] = [];
    const later = (run: () => void, isFirst: boolean) => {
      firsts.push(isFirst);
      coming.push(run);
    };
    let clock_ms = 0;
    const turns = createTurns(undefined, later, () => (clock_ms += 1000));
    const take = (name: string) =>
      turns.take(
        name,
        () => 0,
        () => undefined,
      );
    for (const name of ["a", "b"]) take(name);
    coming[0]?.();
    coming[1]?.();
    take("c");
    expect(firsts).toEqual([true, false, true]);
  });

  it("does one long piece of work a turn, the most urgent first", () => {
    const { turns, tick, waiting } = byHand();
    const done: string[] = [];
    for (const [name, urgency] of [
      ["far", 900],
      ["seen", 0],
      ["near", 20],
    ] as const) {
      turns.take(
        name,
        () => urgency,
        () => done.push(name),
      );
    }
    expect(waiting()).toBe(1);
    tick();
    expect(done).toEqual(["seen"]);
    tick();
    tick();
    expect(done).toEqual(["seen", "near", "far"]);
    expect(waiting()).toBe(0);
  });

  it("drops work that newer work of the same name overtakes", () => {
    const { turns, tick } = byHand();
    const done: string[] = [];
    turns.take(
      "figure",
      () => 0,
      () => done.push("old"),
    );
    turns.take(
      "figure",
      () => 0,
      () => done.push("new"),
    );
    tick();
    tick();
    expect(done).toEqual(["new"]);
  });

  it("does all at once where the printer waits, and nothing twice", () => {
    const { turns, tick } = byHand();
    const done: string[] = [];
    turns.take(
      "a",
      () => 1,
      () => done.push("a"),
    );
    turns.take(
      "b",
      () => 0,
      () => done.push("b"),
    );
    turns.finish();
    tick();
    expect(done.toSorted()).toEqual(["a", "b"]);
  });

  it("tells when work begins to wait and when none waits any more", () => {
    const { turns, told, tick } = byHand();
    turns.take(
      "a",
      () => 0,
      () => {},
    );
    turns.take(
      "b",
      () => 1,
      () => {},
    );
    tick();
    expect(told).toEqual([true]);
    tick();
    expect(told).toEqual([true, false]);
  });

  it("goes on after work that throws", () => {
    const { turns, tick } = byHand();
    const done: string[] = [];
    turns.take(
      "bad",
      () => 0,
      () => {
        throw new Error("no drawing");
      },
    );
    turns.take(
      "good",
      () => 1,
      () => done.push("good"),
    );
    expect(tick).toThrow("no drawing");
    tick();
    expect(done).toEqual(["good"]);
  });
});
