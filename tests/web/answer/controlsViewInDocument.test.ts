import { effect } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { controlsView } from "../../../web/answer/controlsView.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

function controls(changes: Partial<Job>) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), ...changes }, drafts: {} });
  const context = { ...createFieldContext(jobEditor, noRoads), idPrefix: "answer-" };
  const main = document.querySelector("main") as HTMLElement;
  render(nothing, main);
  effect(() => {
    render(controlsView(createForm(context)), main);
  });
  const list = (id: string) => main.querySelector<HTMLSelectElement>(`#answer-${id}`);
  const words = (id: string) => [...(list(id)?.options ?? [])].map(({ textContent }) => textContent?.trim());
  const choose = (id: string, at: number) => {
    const found = list(id);
    if (!found) throw new Error(`no list ${id}`);
    found.selectedIndex = at;
    found.dispatchEvent(new Event("change", { bubbles: true }));
  };
  return { jobEditor, main, list, words, choose };
}

/** The packs of the demo, charged to these shares in turn. */
const packsTo = (...shares: number[]) =>
  demoJob().packs.map((pack, i) => ({ ...pack, ceiling_frac: shares[i % shares.length] ?? 1 }));

it("offers the ceiling of the job in its place among the usual ones", () => {
  const { words, list } = controls({ packs: packsTo(0.87) });
  expect(words("ceiling")).toEqual(["80 %", "85 %", "87 %", "90 %", "95 %", "100 %"]);
  expect(list("ceiling")?.selectedIndex).toBe(2);
});

it("says that packs differ, and puts one ceiling to all of them as one step", () => {
  const packs = packsTo(0.8, 0.9);
  const { words, choose, jobEditor } = controls({ packs });
  expect(packs.length).toBeGreaterThan(1);
  expect(words("ceiling")[0]).toBe("differs by pack");
  choose("ceiling", words("ceiling").indexOf("95 %"));
  expect(jobEditor.job.value.packs.every(({ ceiling_frac }) => ceiling_frac === 0.95)).toBe(true);
  jobEditor.undo();
  expect(jobEditor.job.value.packs).toEqual(packs);
});

it("has a list of supplies where there are several, and puts the chosen one first", () => {
  const [first] = demoJob().supplies;
  expect(controls({ supplies: [first] }).list("supply")).toBeNull();
  const { choose, jobEditor } = controls({
    supplies: [first, { ...first, name: "Shed" }, { ...first, name: "Street" }],
  });
  choose("supply", 2);
  expect(jobEditor.job.value.supplies.map(({ name }) => name)).toEqual(["Street", first.name, "Shed"]);
});

it("drives the road that is chosen", () => {
  const { choose, jobEditor } = controls({});
  choose("road", 1);
  expect(jobEditor.job.value.drivenRoad).toBe(demoJob().roads[1]?.id);
});

it("asks for the winter's day where one is driven, with its heater where it has one, and else for a factor", () => {
  const asks = (conditions: Job["conditions"]) => {
    const ids = [...controls({ conditions }).main.querySelectorAll("input")].map(({ id }) => id);
    return ["allowance-winter_ratio", "conditions-winter-temperature_degC", "conditions-winter-heat-power_kW"].map(
      (field) => ids.includes(`answer-field-${field}`),
    );
  };
  expect(asks(undefined)).toEqual([true, false, false]);
  expect(asks({ winter: { temperature_degC: -5, heat: { kind: "none" } } } as Job["conditions"])).toEqual([
    false,
    true,
    false,
  ]);
  const byHour = { winter: { temperature_degC: -5, heat: { kind: "byHour", power_kW: 2 } } };
  expect(asks(byHour as Job["conditions"])).toEqual([false, true, true]);
});
