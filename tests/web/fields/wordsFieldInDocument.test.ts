import { expect, it } from "vitest";
import type { WordsFieldSpec } from "../../../web/fields/wordsField.ts";
import { firstOf, tooLong, wordsField } from "../../../web/fields/wordsField.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

function page(change: Partial<WordsFieldSpec> = {}) {
  const heard: string[] = [];
  const shown = formPage(demoJob(), () =>
    wordsField({
      id: "times",
      label: "Times",
      text: "90-70",
      write: (text) => heard.push(`key ${text}`),
      leave: (text) => heard.push(`left ${text}`),
      ...change,
    }),
  );
  return { ...shown, heard };
}

it("tells of the text at every key, and once more when the field is left", () => {
  const { type, fire, heard } = page();
  type("#times", "9");
  type("#times", "90");
  fire("#times", "change");
  expect(heard).toEqual(["key 9", "key 90", "left 90"]);
});

it("says how it was understood, or what is wrong in place of that, and prints nothing wrong", () => {
  expect(page({ understood: "1 band" }).said(".says")).toBe("1 band");
  const { said, at } = page({ understood: "1 band", problem: "no seconds" });
  expect(said(".says")).toBe("Wrong: no seconds.");
  expect(said(".as-printed")).toBe("");
  expect(at("#times").getAttribute("aria-invalid")).toBe("true");
});

it("has several lines where it is given room for them, and keeps all that is pasted there", () => {
  expect(page().at("#times").tagName).toBe("INPUT");
  const { type, heard, at } = page({ rows: 3 });
  expect(at("#times").tagName).toBe("TEXTAREA");
  type("#times", "one\ntwo");
  expect(heard).toEqual(["key one\ntwo"]);
});

it("refuses a text from one letter too many on", () => {
  expect(tooLong("12345", 5)).toBeUndefined();
  expect(tooLong("123456", 5)).toBe("found 6 letters, at most 5 can be kept");
});

it("names the first faults, and how many more there are only where there are more", () => {
  expect(firstOf(["a"])).toBe("a");
  expect(firstOf(["a", "b"])).toBe("a; b");
  expect(firstOf(["a", "b", "c", "d"])).toBe("a; b; and 2 more like it");
  expect(firstOf(["a", "b"], 1)).toBe("a; and 1 more like it");
});
