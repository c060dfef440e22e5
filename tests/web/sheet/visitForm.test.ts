import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { visitForm } from "../../../web/sheet/visitForm.ts";

const { document } = new JSDOM("").window;

/** What is written beside each thing that is asked. */
const unitsOf = (units: Parameters<typeof visitForm>[1]) =>
  new Map(
    [...visitForm(document, units).querySelectorAll("tr")].map((row) => [
      row.querySelector("th")?.textContent ?? "",
      row.querySelector("td")?.textContent ?? "",
    ]),
  );

it("asks for everything with its unit, the same things in every system of units", () => {
  for (const units of ["metric", "british", "american"] as const) {
    const asked = unitsOf(units);
    expect([...asked.values()].every((unit) => unit !== "")).toBe(true);
    expect(asked.size).toBe(unitsOf("metric").size);
  }
});

it("is in the workshop's own units throughout", () => {
  const metric = [...unitsOf("metric")].flat().join(" ");
  const british = [...unitsOf("british")].flat().join(" ");
  expect(metric).not.toMatch(/\b(miles|lb|mph|mpg|°F)\b/);
  expect(british).not.toMatch(/\b(km|kg|mm|Nm)\b/);
  expect(unitsOf("british").get("Usual day")).toBe("miles");
});

it("asks for a coast-down over two spans of speed, a fast one for the air and a slow one for the tyres", () => {
  // 50 to 40 mph are 80 to 64 km/h, 20 to 10 mph are 32 to 16 km/h.
  expect(unitsOf("metric").get("80 to 64 km/h")).toBe("s");
  expect(unitsOf("metric").get("32 to 16 km/h")).toBe("s");
  expect(unitsOf("british").get("50 to 40 mph")).toBe("s");
  expect(unitsOf("british").get("20 to 10 mph")).toBe("s");
});
