import { expect, it } from "vitest";
import type { RoadFieldSpec, RoadQuantity } from "../../../web/fields/roadField.ts";
import { roadQuantity } from "../../../web/fields/roadField.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const stops: RoadFieldSpec = { id: "stops", label: "Stops in a km", kind: "number", usual: "0.5", min: 0, max: 20 };
const speed: RoadFieldSpec = { id: "speed", label: "Speed", kind: "speed", usual: "50 km/h", min: 5, max: 200 };

function page(spec: RoadFieldSpec) {
  let now: RoadQuantity | undefined;
  const shown = formPage(demoJob(), (form) => {
    now = roadQuantity(form, spec);
    return now.field;
  });
  const read = (text: string) => {
    shown.type(`#${spec.id}`, text);
    return now?.problem ?? now?.value;
  };
  return { ...shown, read, now: () => now };
}

it("holds the usual text until another one is typed, and that one outside of the job", () => {
  const { now, at, read, job } = page(speed);
  expect(at("#speed").value).toBe("50 km/h");
  expect(now()).toMatchObject({ value: 50, problem: undefined });
  expect(read("30 mph")).toBeCloseTo(48.28032, 9); // 30 × 1.609344
  expect(job()).toEqual(demoJob());
});

it("takes plain numbers with a point or a comma, the bounds among them", () => {
  const { read } = page(stops);
  expect(["0", "20", "1.5", "1,5", " 3 "].map(read)).toEqual([0, 20, 1.5, 1.5, 3]);
});

it("says what was found and what is wanted of every other text", () => {
  const { read, said } = page(stops);
  for (const text of ["20.1", "-1", "1e1", "many", ""]) {
    expect(read(text)).toBe(`found "${text}", a number from 0 to 20 wanted`);
  }
  expect(said(".says")).toBe('Wrong: found "", a number from 0 to 20 wanted.');
  expect(page({ ...stops, unit: "m/s²" }).read("x")).toBe('found "x", a number from 0 to 20 m/s² wanted');
});

it("refuses a quantity beyond its bounds", () => {
  const { read, now } = page(speed);
  read("300 km/h");
  expect(now()?.value).toBeUndefined();
  expect(now()?.problem).toContain("200 km/h");
});

it("is nothing and no fault where it is empty and may be", () => {
  for (const spec of [stops, speed]) {
    const { now } = page({ ...spec, usual: "", mayBeEmpty: true });
    expect(now()).toMatchObject({ value: undefined, problem: undefined });
  }
});
