import { expect, it } from "vitest";
import type { Job, Origin } from "../../../shared/job/job.ts";
import { withPath } from "../../../shared/job/path.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const load = "vehicle.load_kg"; // 110 kg, usual 150
const gross = "vehicle.gross_kg"; // if known
const idOf = (path: string) => `#field-${path.replaceAll(".", "-")}`;

/** The field of a path in a job without axle loads, against which masses are checked, with an origin of the test's own. */
function page(path: string, origin?: Origin, change: Partial<Job> = {}) {
  const { [path]: _own, ...others } = demoJob().origins;
  const job: Job = { ...withPath(demoJob(), "weights", undefined), ...change };
  return {
    ...formPage({ ...job, origins: { ...others, ...(origin && { [path]: origin }) } }, (form) => form.field(path)),
    input: idOf(path),
  };
}

it("shows the number with its unit beside it, or what was typed with the unit that was typed", () => {
  const bare = page(load);
  expect([bare.at(bare.input).value, bare.said(".unit")]).toEqual(["110", "kg"]);
  const typed = page(load, { from: "measured", typed: "110 kg" });
  expect([typed.at(typed.input).value, typed.said(".unit")]).toEqual(["110 kg", ""]);
  expect(typed.said(".as-printed")).toBe("110 kg (measured)");
});

it("says how a text was understood, and tells off what is wrong only when the field is left", () => {
  const { type, fire, said, job, input } = page(load);
  type(input, "200 lb");
  expect(job().vehicle.load_kg).toBeCloseTo(90.718474, 6); // 200 × 0.45359237
  expect(said(".says")).toMatch(/90\.7 kg/);
  type(input, "2oo");
  expect(said(".says")).toBe("");
  fire(input, "blur");
  // One run of edits: what stood before it holds.
  expect(said(".says")).toMatch(/^Wrong: .*\. Using 110 kg\.$/);
});

it("offers the usual value of an emptied field, and takes it only when it is asked for", () => {
  const { type, fire, said, job, press, input } = page(load);
  type(input, "");
  fire(input, "blur");
  expect(said(".says")).toMatch(/^Empty: /);
  expect(job().vehicle.load_kg).toBe(110);
  press(/^Use the usual 150 kg$/);
  expect(job().vehicle.load_kg).toBe(150);
  expect(job().origins[load]).toEqual({ from: "usual" });
});

it("leaves a figure that nobody knows out of the job, and asks no origin of it", () => {
  const { type, fire, job, has, said, input } = page(gross);
  expect(said("label")).toBe("Gross weight on the plate if known");
  type(input, "");
  fire(input, "blur");
  expect(job().vehicle.gross_kg).toBeUndefined();
  expect(has(".origin")).toBe(false);
  expect(has(".is-wrong")).toBe(false);
});

it("asks which hundredweight is meant, writes the answer, and does not ask again", () => {
  const { type, fire, press, job, has, input } = page(load);
  type(input, "2 cwt");
  expect(has(".asked")).toBe(false); // not while it is being typed
  fire(input, "blur");
  press(/^112 lb/);
  expect(job().vehicle.load_kg).toBeCloseTo(2 * 112 * 0.45359237, 9);
  type(input, "3 cwt");
  fire(input, "blur");
  expect(has(".asked")).toBe(false);
  expect(job().vehicle.load_kg).toBeCloseTo(3 * 112 * 0.45359237, 9);
});

it("asks about a value that hardly any car has until somebody says that it is right", () => {
  const { said, press, job, has } = page("vehicle.tyres.rolling_coeff", undefined, {
    vehicle: withPath(demoJob(), "vehicle.tyres.rolling_coeff", 0.05).vehicle,
  });
  expect(said(".is-unusual")).toContain("a tyre has 0.005 to 0.04");
  press(/^It is right$/);
  expect(job().origins["vehicle.tyres.rolling_coeff"]).toEqual({ from: "typed", isConfirmed: true });
  expect(has(".is-unusual")).toBe(false);
});
