import { describe, expect, it } from "vitest";
import { createTurns } from "../../../web/notebook/turns.ts";

/** A clock that the test moves on, turn by turn. */
function byHand() {
  const coming: (() => void)[] = [];
  const told: boolean[] = [];
  const turns = createTurns(
    (isWaiting) => told.push(isWaiting),
    (run) => coming.push(run),
  );
  return { turns, told, tick: () => coming.shift()?.(), waiting: () => coming.length };
}

describe("turns", () => {
  it("does one piece of work a turn, the most urgent first", () => {
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
