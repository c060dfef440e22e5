import { signal } from "@preact/signals-core";
import { render } from "lit-html";
import { afterEach, expect, it, vi } from "vitest";
import { commonPosition } from "../../../../web/charts/parts/reading/commonPosition.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { fillWorked } from "../../../../web/notebook/figures/fillWorked.ts";
import { placesOf, sectionFrame } from "../../../../web/notebook/figures/sectionView.ts";
import type { Reading } from "../../../../web/notebook/graph/graph.ts";
import type { AnySection, Table } from "../../../../web/sections/parts/section.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const table = (caption: string): Table => ({ caption, columns: [{ title: "Pack" }], rows: [] });
const ready = (value: unknown, isLate = false): Reading<unknown> => ({ state: "ready", value, isLate });

/** A working that has a table of its value's name, drawn by `plot`. */
function working(
  plot: (value: string) => ReturnType<AnySection["plot"]> = (value) => [table(value)],
  isOpenAtFirst = true,
) {
  const section: AnySection = {
    name: "packs",
    title: "Packs",
    question: "",
    inputs: ["job"],
    compute: () => undefined,
    plot,
    sentence: (value: string) => `It is ${value}.`,
  };
  const place = document.createElement("div");
  render(sectionFrame(section), place);
  const places = placesOf(place.querySelector("#packs") as HTMLElement);
  const reading = signal<Reading<unknown>>({ state: "waiting" });
  const open = signal(isOpenAtFirst);
  const waiting: (() => void)[] = [];
  const retry = vi.fn();
  fillWorked(section, reading, places, {
    turns: { take: (_name, _urgency, work) => void waiting.push(work), finish: () => {} },
    width_px: signal(640),
    context: createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads),
    firstNumber: signal(1),
    named: signal([]),
    common: commonPosition(),
    urgency: () => 0,
    isOpen: () => open.value,
    attempt: () => {},
    retry,
  });
  const turn = () => waiting.shift()?.();
  const settle = () => {
    while (waiting.length > 0) turn();
    return [...places.worked.querySelectorAll("caption")].map(({ textContent }) => textContent);
  };
  return { places, reading, open, turn, settle, retry, finding: () => places.finding.textContent ?? "" };
}

afterEach(() => vi.unstubAllGlobals());

it("draws nothing that is folded away, and what is wanted as it is opened", () => {
  const { reading, open, settle, finding } = working(undefined, false);
  reading.value = ready("small");
  expect(settle()).toEqual([]);
  open.value = true;
  expect(settle()).toEqual(["small"]);
  expect(finding()).toContain("It is small.");
});

it("keeps what stands while a newer value is on its way, marked late, and takes it out for another job", () => {
  const { places, reading, settle, finding } = working();
  reading.value = ready("small");
  settle();
  reading.value = ready("between", true);
  expect(settle()).toEqual(["small"]);
  expect(places.whole.hasAttribute("data-late")).toBe(true);
  reading.value = { state: "waiting" };
  expect(settle()).toEqual([]);
  expect(finding()).toBe("");
  reading.value = ready("large");
  expect(settle()).toEqual(["large"]);
  expect(places.whole.hasAttribute("data-late")).toBe(false);
});

it("shows figures that are drawn one a turn together, once the last of them is there", () => {
  const { reading, turn, settle, places } = working(function* (value) {
    yield table(`${value} one`);
    yield table(`${value} two`);
  });
  settle();
  reading.value = ready("small");
  for (let turns = 0; turns < 3; turns++) turn(); // asked for, and both drawn
  expect(places.worked.querySelector("caption")).toBeNull();
  expect(settle()).toEqual(["small one", "small two"]);
});

it("takes out what stands where it failed, says so and tries again; a fault of drawing is reported too", () => {
  const reported = vi.fn();
  vi.stubGlobal("reportError", reported);
  const { places, reading, settle, finding, retry } = working();
  reading.value = ready("small");
  settle();
  reading.value = { state: "failed", message: "", where: "road", error: new Error("x") };
  expect(settle()).toEqual([]);
  expect(finding()).toContain('needs "road"');
  places.finding.querySelector("button")?.click();
  expect(retry).toHaveBeenCalledOnce();
  const fault = new Error("no such scale");
  const broken = working(() => {
    throw fault;
  });
  broken.reading.value = ready("small");
  broken.settle();
  expect(broken.finding()).toContain("This section could not be calculated.");
  expect(reported).toHaveBeenCalledExactlyOnceWith(fault);
});
