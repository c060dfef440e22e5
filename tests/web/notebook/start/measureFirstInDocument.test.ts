import { html, render } from "lit-html";
import { expect, it } from "vitest";
import type { WorthMeasuring } from "../../../../sim/index.ts";
import { measureFirstView } from "../../../../web/notebook/start/measureFirst.ts";

const found = (name: string, cost_km: number): WorthMeasuring => ({
  measurement: { id: name, name, subject: name, path: "vehicle.kerb_kg", covers: /./ },
  cost_km,
});

function shown(measurements: readonly WorthMeasuring[], units: "metric" | "british" = "metric") {
  const place = document.createElement("div");
  render(html`${measureFirstView(measurements, units)}`, place);
  return [...place.querySelectorAll("li")].map(({ textContent }) => textContent);
}

it("shows the three dearest measurements that cost a kilometre or more, in whole units rounded up", () => {
  const all = [found("coast down", Number.POSITIVE_INFINITY), found("weigh", 4.2), found("small", 0.9), found("b", 3)];
  expect(shown([...all, found("c", 2)])).toEqual([
    "coast down: it decides whether the car drives this road at all",
    "weigh: it may cost 5 km of a winter's day at ten years",
    "b: it may cost 3 km of a winter's day at ten years",
  ]);
  // 4.2 km are 2.6 miles.
  expect(shown([found("weigh", 4.2)], "british")).toEqual([
    "weigh: it may cost 3 miles of a winter's day at ten years",
  ]);
});

it("shows nothing where nothing is worth it", () => {
  const place = document.createElement("div");
  render(html`${measureFirstView([found("small", 0.9)], "metric")}`, place);
  expect(place.textContent).toBe("");
});
