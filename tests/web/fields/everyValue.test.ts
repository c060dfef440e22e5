import { expect, it } from "vitest";
import * as z from "zod";
import { Job } from "../../../shared/job/job.ts";
import { knownField } from "../../../web/editing/fieldTable/fieldAt.ts";

/** What has no field of its own, and why. */
const elsewhere: readonly [RegExp, string][] = [
  [/^(format|version|isInvented|notes|hiddenSections|origins)\b/, "no figure of a car"],
  [/^pinned\b/, "pinned by a press on the answer"],
  [/^predictions\b/, "frozen by a press, and never changed"],
  [/^weights\b/, "written in the job file for `weigh`; the page has no fields for it yet"],
  [/^(roads|drivenRoad)\b/, "the section of the road brings and chooses them"],
  [/^(charts|units)\b/, "chosen at the charts and at the head of the page"],
  [/\.kind$/, "chosen with its group"],
  [/^motor\.loss\.(speed_rpm|torque_Nm|loss_W|efficiency_frac\.)/, "brought as a file"],
  [/^driveline\.shifting\.(gear|gears\.\*)$/, "chosen gear by gear"],
  [/^module\.(openCircuit|resistance)\.soc_frac|^module\.resistanceByTemperature\.temperature_degC/, "axes of a curve"],
  [/^charger\.efficiencyByLoad\.load_frac/, "the axis of a curve"],
  [/^environment\.gravity_mps2$/, "the same everywhere a car is converted"],
];

/** Paths of all values that the schema of a job can hold, `*` for a place in a list. */
function pathsOf(shape: unknown, path: string): string[] {
  if (shape instanceof z.ZodOptional || shape instanceof z.ZodDefault || shape instanceof z.ZodPrefault)
    return pathsOf(shape.unwrap(), path);
  if (shape instanceof z.ZodObject)
    return Object.entries(shape.shape).flatMap(([key, inner]) => pathsOf(inner, path === "" ? key : `${path}.${key}`));
  if (shape instanceof z.ZodArray) return pathsOf(shape.element, `${path}.*`);
  if (shape instanceof z.ZodDiscriminatedUnion) return shape.options.flatMap((option) => pathsOf(option, path));
  return [path];
}

const paths = [...new Set(pathsOf(Job, ""))];
const expected = paths.filter((path) => !elsewhere.some(([pattern]) => pattern.test(path)));

it("walks the whole schema", () => {
  expect(expected.length).toBeGreaterThan(110);
  for (const [pattern] of elsewhere) expect(paths.some((path) => pattern.test(path))).toBe(true);
});

it.each(expected)("%s can be written on the page", (path) => {
  expect(knownField(path)).toBeDefined();
});
