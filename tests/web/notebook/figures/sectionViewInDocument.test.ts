import { html, render } from "lit-html";
import { expect, it } from "vitest";
import { EmptyFields } from "../../../../web/editing/emptied.ts";
import { failureView, findingView, placesOf, sectionFrame } from "../../../../web/notebook/figures/sectionView.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";

const section: AnySection = {
  name: "load",
  title: "Load",
  question: "How heavy?",
  inputs: ["job"],
  compute: () => 0,
  plot: () => [],
  sentence: () => "",
};

function drawn(view: ReturnType<typeof sectionFrame>): HTMLElement {
  const place = document.createElement("div");
  render(view, place);
  return place;
}

it("has a part for what is given, and a caution, only where the section has them", () => {
  const heads = (of: AnySection) => [...drawn(sectionFrame(of)).querySelectorAll(".part-head")].map((each) => each.id);
  expect(heads(section)).toEqual(["load-worked", "load-finding"]);
  expect(heads({ ...section, given: () => html`` })).toEqual(["load-given", "load-worked", "load-finding"]);
  expect(drawn(sectionFrame(section)).querySelector(".caution")).toBeNull();
  expect(drawn(sectionFrame({ ...section, caution: "It is heavy." })).textContent).toContain("Take care. It is heavy.");
});

it("has each place of its own, and for one that it lacks the whole", () => {
  const frame = drawn(sectionFrame(section));
  const { whole, given, ...others } = placesOf(frame);
  expect(given).toBe(whole);
  const places = Object.values(others);
  expect(new Set([whole, ...places]).size).toBe(6);
  expect(Object.entries(others).filter(([name, place]) => place.dataset["place"] !== name)).toEqual([]);
});

it("leads a long finding by what it comes to, where it begins with that", () => {
  const parts = (...of: Parameters<typeof findingView>) => {
    const place = drawn(findingView(...of));
    return [".sentence", ".in-full", ".late"].map((each) => place.querySelector(each)?.textContent);
  };
  expect(parts("Enough. It has 9 left.", [], false, "Enough.")).toEqual(["Enough.", "It has 9 left.", ""]);
  expect(parts("It has 9 left.", [], false, "Enough.")).toEqual(["It has 9 left.", undefined, ""]);
  expect(parts("Enough.", [], true)).toEqual(["Enough.", undefined, "Calculating …"]);
});

it("lists what needs attention, and has no list where nothing does", () => {
  const items = (attention: readonly string[]) =>
    drawn(findingView("", attention, false)).querySelectorAll("ul li").length;
  expect(items(["one", "two"])).toBe(2);
  expect(drawn(findingView("", [], false)).querySelector("ul")).toBeNull();
});

it("says whether the section itself failed or what it needs, and tries again; an empty field is only waited for", () => {
  let tries = 0;
  const failed = (where: string, error: unknown) => drawn(failureView(section, where, error, () => tries++));
  expect(failed("load", new Error("x")).textContent).toContain("This section could not be calculated.");
  const other = failed("road", new Error("x"));
  expect(other.textContent).toContain('This section needs "road", which could not be calculated.');
  other.querySelector("button")?.click();
  expect(tries).toBe(1);
  const empty = failed("machine", new EmptyFields(["vehicle.load_kg"]));
  expect(empty.querySelector("button")).toBeNull();
  expect(empty.textContent).toMatch(/^Waiting for “.*”: empty\.$/);
});
