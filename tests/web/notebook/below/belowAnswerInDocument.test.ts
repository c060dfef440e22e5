import { beforeEach, expect, it, vi } from "vitest";
import { inputError } from "../../../../shared/problems.ts";
import { belowAnswer } from "../../../../web/notebook/below/belowAnswer.ts";
import type { BelowSetting, Filled } from "../../../../web/notebook/below/fillBelow.ts";

const filled: Filled = { openAll: async () => {}, openFor: () => {} };
const fillBelow = vi.fn<() => Filled>();
vi.mock("../../../../web/notebook/below/fillBelow.ts", () => ({ fillBelow: () => fillBelow() }));

const setting = {} as BelowSetting; // handed on
const onFilled = vi.fn();

beforeEach(() => {
  fillBelow.mockReset().mockReturnValue(filled);
  onFilled.mockReset();
});

/** The places below the answer, and what fills them. */
function below() {
  const places = { chapters: document.createElement("div"), workings: document.createElement("div") };
  const fill = belowAnswer(document.createElement("main"), places, setting, onFilled);
  const all = Object.values(places);
  return {
    fill,
    words: () => all.map(({ textContent }) => textContent),
    isLoading: () => all.map(({ dataset }) => dataset["loading"] !== undefined),
  };
}

it("says that chapters and workings are on their way until they are wanted, and fills them once", async () => {
  const { fill, words, isLoading } = below();
  expect(words()).toEqual(["Loading the chapters …", "Loading the workings …"]);
  expect(isLoading()).toEqual([true, true]);
  expect(fillBelow).not.toHaveBeenCalled();
  expect(await Promise.all([fill(), fill()])).toEqual([filled, filled]);
  expect([fillBelow.mock.calls.length, onFilled.mock.calls.length]).toEqual([1, 1]);
  expect([words(), isLoading()]).toEqual([
    ["", ""],
    [false, false],
  ]);
});

it("says in both places why they could not be had, and has nothing then", async () => {
  fillBelow.mockImplementation(() => {
    throw inputError("notFetched", "this page", "its server was stopped");
  });
  const { fill, words } = below();
  expect(await fill()).toBeUndefined();
  for (const each of words()) expect(each).toMatch(/this page: its server was stopped\..*Reload the page/s);
  expect(onFilled).not.toHaveBeenCalled();
});

it("lets a fault of ours be heard of, and says in both places that it is one", async () => {
  fillBelow.mockImplementation(() => {
    throw new TypeError("x is undefined");
  });
  const { fill, words } = below();
  await expect(fill()).rejects.toThrow("x is undefined");
  for (const each of words()) expect(each).not.toContain("undefined");
});
