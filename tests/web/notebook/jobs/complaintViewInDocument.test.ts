import { render } from "lit-html";
import { expect, it, vi } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { complaintOf, complaintView } from "../../../../web/notebook/jobs/complaintView.ts";
import { StoreRefusal } from "../../../../web/store/database/storeRefusal.ts";

const problem = (where: string, message: string) => ({ code: "test", where, message });

it("says each problem of wrong input by itself, with its place", () => {
  const error = new InputError([problem("packs.0.name", "found nothing"), problem("usualDay_km", "found -3 km")]);
  expect(complaintOf(error)).toEqual(["packs.0.name: found nothing", "usualDay_km: found -3 km"]);
});

it("says what the browser or the store refused in its own words", () => {
  expect(complaintOf(new DOMException("The file is gone.", "NotFoundError"))).toEqual(["The file is gone."]);
  expect(complaintOf(new StoreRefusal("full", "No room left."))).toEqual(["No room left."]);
});

it("says of a fault of ours only that it is one, and reports it", () => {
  const reported = vi.fn();
  vi.stubGlobal("reportError", reported);
  const error = new TypeError("x is undefined");
  expect(complaintOf(error).join()).not.toContain("undefined");
  expect(reported).toHaveBeenCalledExactlyOnceWith(error);
  vi.unstubAllGlobals();
});

it("shows one fault as a sentence, more as a list, and counts those past thirty", () => {
  const shown = (count: number) => {
    const place = document.createElement("div");
    render(complaintView(Array.from({ length: count }, (_, i) => `fault ${i + 1}`)), place);
    return { items: place.querySelectorAll("li").length, text: place.textContent?.replace(/\s+/g, " ").trim() };
  };
  expect(shown(0)).toEqual({ items: 0, text: "" });
  expect(shown(1)).toEqual({ items: 0, text: "fault 1" });
  expect(shown(30).items).toBe(30);
  expect(shown(30).text).not.toContain("more");
  expect(shown(33)).toEqual({ items: 30, text: expect.stringMatching(/^33 things are wrong: .* And 3 more\.$/) });
});
