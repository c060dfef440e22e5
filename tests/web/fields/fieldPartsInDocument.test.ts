import { expect, it } from "vitest";
import { fieldIds, says } from "../../../web/fields/fieldParts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const ids = fieldIds("packs.0.name");
const saidBy = (...args: Parameters<typeof says>) => formPage(demoJob(), () => says(...args)).said();

it("makes ids of a path that no other field has, and others for a field that stands there a second time", () => {
  expect(ids).toEqual({
    input: "field-packs-0-name",
    says: "field-packs-0-name-says",
    hint: "field-packs-0-name-hint",
  });
  expect(fieldIds("packs.0.name", "open-").says).toBe("open-field-packs-0-name-says");
});

it("says how a text was understood, or nothing, in a place that is always there to be announced", () => {
  expect(saidBy(ids, undefined, ["= 724 kg", "long hundredweight"])).toBe("= 724 kg; long hundredweight");
  const { at, said } = formPage(demoJob(), () => says(ids, undefined, []));
  expect(said()).toBe("");
  expect(at(`#${ids.says}`).getAttribute("aria-live")).toBe("polite");
});

it("says what is wrong and what is used in its place, in place of how it was understood", () => {
  expect(saidBy(ids, "-5 kg is not possible", ["= 724 kg"], "953 kg")).toBe(
    "Wrong: -5 kg is not possible. Using 953 kg.",
  );
  expect(saidBy(ids, "-5 kg is not possible", [])).toBe("Wrong: -5 kg is not possible.");
});

it("says of an empty field that it is empty, and that nothing is used in its place", () => {
  expect(saidBy(ids, "what depends on it waits", [], "953 kg", true)).toBe("Empty: what depends on it waits.");
});
