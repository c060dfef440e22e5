import { afterEach, describe, expect, it, vi } from "vitest";
import { oneOfAKind } from "../../../../web/worker/simulation/oneOfAKind.ts";

const settled = () => new Promise((resolve) => setTimeout(resolve));

/** Questions that the test answers itself. */
function asking(rest_ms = 0) {
  const ask = oneOfAKind(rest_ms);
  const put: { name: string; answer: (value: string) => void; fail: (error: Error) => void }[] = [];
  const answers: string[] = [];
  const question = (kind: string, name: string) => {
    ask(kind, () => new Promise<string>((answer, fail) => put.push({ name, answer, fail }))).then(
      (answer) => answers.push(answer),
      (error: Error) => answers.push(error.message),
    );
  };
  return { put, answers, question };
}

describe("one question of a kind at a time", () => {
  it("puts the next of a kind only when the one before is answered", async () => {
    const { put, answers, question } = asking();
    question("drive", "first");
    question("drive", "second");
    expect(put.map(({ name }) => name)).toEqual(["first"]);
    put[0].answer("one");
    await settled();
    expect(put.map(({ name }) => name)).toEqual(["first", "second"]);
    put[1].answer("two");
    await settled();
    expect(answers).toEqual(["one", "two"]);
  });

  it("never lets a question of another kind wait for an answer", () => {
    const { put, question } = asking();
    question("drive", "over the road");
    question("steady", "table");
    expect(put.map(({ name }) => name)).toEqual(["over the road", "table"]);
  });

  it("never puts a question that a newer one of its kind overtook while it waited", async () => {
    const { put, answers, question } = asking();
    question("drive", "at 30");
    question("drive", "at 40");
    question("drive", "at 50");
    put[0].answer("30");
    await settled();
    put[1].answer("50");
    await settled();
    expect(put.map(({ name }) => name)).toEqual(["at 30", "at 50"]);
    expect(answers).toEqual(["30", "50"]);
  });

  it("goes on after a question that failed", async () => {
    const { put, answers, question } = asking();
    question("drive", "first");
    question("drive", "second");
    put[0].fail(new Error("no road"));
    await settled();
    put[1].answer("two");
    await settled();
    expect(answers).toEqual(["no road", "two"]);
  });
});

describe("with a rest before each question", () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  it("puts only the last of a run of changes, and that when the run has ended", async () => {
    vi.useFakeTimers();
    const { put, question } = asking(250);
    for (const name of ["at 30", "at 31", "at 32"]) {
      question("study", name);
      await vi.advanceTimersByTimeAsync(200);
    }
    expect(put).toEqual([]);
    await vi.advanceTimersByTimeAsync(50);
    expect(put.map(({ name }) => name)).toEqual(["at 32"]);
  });

  it("lets a question that came during an answer rest as well", async () => {
    vi.useFakeTimers();
    const { put, question } = asking(250);
    question("study", "first");
    await vi.advanceTimersByTimeAsync(250);
    question("study", "second");
    put[0].answer("one");
    await vi.advanceTimersByTimeAsync(249);
    expect(put).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(put.map(({ name }) => name)).toEqual(["first", "second"]);
  });
});
