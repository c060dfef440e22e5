import { expect, it } from "vitest";
import { practice } from "../../../../shared/parts/origin.ts";
import type { Part } from "../../../../shared/parts/part.ts";
import { tyres } from "../../../../shared/parts/tyres.ts";
import type { PickerOf } from "../../../../web/forms/parts/partPicker.ts";
import { partPicker } from "../../../../web/forms/parts/partPicker.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const page = (picker: Omit<PickerOf, "id" | "label">) =>
  formPage(demoJob(), (form) => partPicker(form, { id: "part", label: "A part", ...picker }));
const ofTyres = () => page({ parts: tyres, path: "vehicle.tyres" });
const pump: Part<unknown> = {
  id: "pump",
  title: "A pump",
  data: { name: "pump", power_W: 100, duty_frac: 0.5, supply: "12V" },
  origins: { power_W: practice(80, 120), duty_frac: practice(0.3, 0.7) },
};
// The demo's radius of 284 mm and both figures of its rolling were measured; a cross-ply's are others.
const crossPly = "period-cross-ply";

it("offers nothing until a part is chosen, and changes nothing by choosing or discarding one", () => {
  const { choose, press, has, at, job } = ofTyres();
  expect(has(".offer")).toBe(false);
  choose("#pick-part", crossPly);
  expect(has(".offer")).toBe(true);
  press(/^Discard$/);
  expect([has(".offer"), at("#pick-part").value]).toEqual([false, ""]);
  expect(job()).toEqual(demoJob());
});

it("names what was measured for this car and would go, and keeps it where that is asked for", () => {
  const { choose, texts, press, job, has } = ofTyres();
  choose("#pick-part", crossPly);
  expect(texts(".heed li")).toHaveLength(3);
  expect(texts(".heed li")[0]).toMatch(/^Rolling radius of the tyre: 284 mm, measured; the part has \d+ mm$/);
  press(/^Take it, but keep these$/);
  expect(job().vehicle.tyres).toMatchObject({ loadedRadius_mm: 284, rolling_coeff: 0.0136 });
  expect(job().vehicle.tyres.name).not.toBe(demoJob().vehicle.tyres.name);
  expect(has(".offer")).toBe(false);
});

it("takes all of it where that is asked for", () => {
  const { choose, press, job } = ofTyres();
  choose("#pick-part", crossPly);
  press(/^Take all of it$/);
  expect(job().vehicle.tyres).toEqual(tyres.find(({ id }) => id === crossPly)?.data);
});

it("adds a part to a list, where it replaces nothing, and says how much of it is known how well", () => {
  const { choose, press, job, said, has, buttons } = page({ parts: [pump], path: "accessories.items", into: "list" });
  choose("#pick-part", "pump");
  expect(buttons()).toEqual(["Add it", "Discard"]);
  expect(has(".heed")).toBe(false);
  expect(said(".offer p")).toBe(
    "Of its figures 2 are common practice without a source. Nobody's product: write your own part's figures over them.",
  );
  press(/^Add it$/);
  expect(job().accessories.items.at(-1)).toEqual(pump.data);
});

it("says why where the job does not take a part, which stays chosen", () => {
  const wrong = { ...pump, data: { name: "pump", power_W: -1, duty_frac: 0.5, supply: "12V" } };
  const { choose, press, said, has } = page({ parts: [wrong], path: "accessories.items", into: "list" });
  choose("#pick-part", "pump");
  press(/^Add it$/);
  expect(said(".refused")).toMatch(/^Not done: /);
  expect(has(".offer")).toBe(true);
});
