import { expect, it } from "vitest";
import { StoreRefusal, toRefusal } from "../../../../web/store/database/storeRefusal.ts";

const named = (name: string, message: string) => Object.assign(new Error(message), { name });

it.each<[unknown, string]>([
  [named("QuotaExceededError", ""), "full"],
  [new Error("The disk is full"), "full"],
  [named("VersionError", "newer"), "outdated"],
  [new Error("odd"), "failed"],
  ["text", "failed"],
])("knows why a database would not: %s", (error, reason) => {
  expect(toRefusal(error).reason).toBe(reason);
  expect(toRefusal(error).message).not.toBe("");
});

it("leaves a refusal as it is", () => {
  const refusal = new StoreRefusal("differs", "read back otherwise");
  expect(toRefusal(refusal)).toBe(refusal);
});
