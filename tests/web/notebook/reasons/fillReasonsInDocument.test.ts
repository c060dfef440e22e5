import { signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import type { Graph, Reading } from "../../../../web/notebook/graph/graph.ts";
import { fillReasons } from "../../../../web/notebook/reasons/fillReasons.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

const { job, runs, enough } = sectionValues(demoJob());
const answerIndex = 1;

/** The reasons below a working with these inputs, the pack in view being this one. */
function reasonsOf(inputs: AnySection["inputs"], packIndex: number, explains: readonly string[] = ["range_km"]) {
  const values: Readonly<Record<string, unknown>> = { job, runs, enough, units: "metric", answerIndex, packIndex };
  const read = (name: string) => signal<Reading<unknown>>({ state: "ready", value: values[name], isLate: false });
  const section: AnySection = {
    name: "test",
    title: "",
    question: "",
    explains,
    inputs,
    compute: () => 0,
    plot: () => [],
    sentence: () => "",
  };
  const place = document.createElement("div");
  fillReasons(section, place, { read } as Pick<Graph, "read"> as Graph);
  const put = (isOpen: boolean) => {
    const fold = place.querySelector("details.reasons") as HTMLDetailsElement;
    fold.open = isOpen;
    fold.dispatchEvent(new Event("toggle"));
  };
  const isFilled = () => (place.querySelector("details.reasons")?.children.length ?? 0) > 1;
  return { place, put, isFilled };
}

it("has no fold below a working without figures that are explained", () => {
  expect(reasonsOf(["runs"], 0, []).place.childElementCount).toBe(0);
});

it("explains nothing before it is opened, and nothing any more once it is closed", async () => {
  const { put, isFilled, place } = reasonsOf(["runs"], 0);
  expect(isFilled()).toBe(false);
  put(true);
  await vi.waitFor(() => expect(isFilled()).toBe(true), 30_000);
  expect(place.textContent).toContain("Source:");
  put(false);
  expect(isFilled()).toBe(false);
});

it("speaks of the pack in view and says whether that is the answer's; what has a band is of the answer", async () => {
  const whose = async (inputs: AnySection["inputs"], packIndex: number) => {
    const { put, isFilled, place } = reasonsOf(inputs, packIndex);
    put(true);
    await vi.waitFor(() => expect(isFilled()).toBe(true), 30_000);
    return /with [\d.]+ kWh, the pack (in view|of the answer)/.exec(
      place.textContent?.replaceAll("\u00a0", " ") ?? "",
    )?.[0];
  };
  expect(await whose(["runs"], 2)).toBe("with 17 kWh, the pack in view");
  expect(await whose(["runs"], answerIndex)).toBe("with 13 kWh, the pack of the answer");
  expect(await whose(["runs", "unknowns"], 2)).toBe("with 13 kWh, the pack of the answer");
});
