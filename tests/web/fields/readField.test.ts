import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { fieldAt } from "../../../web/editing/fieldTable/fieldAt.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import type { QuantityFieldSpec } from "../../../web/fields/quantityField.ts";
import { readField } from "../../../web/fields/readField.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

const kerb = "vehicle.kerb_kg";

function reader(units: "metric" | "british" = "metric") {
  const job = withPath(demoJob(), "units", units);
  const context = createFieldContext(createJobEditor({ job, drafts: {} }), noRoads);
  return {
    context,
    read: (path: string, text: string) => readField(context, path, fieldAt(path) as QuantityFieldSpec, text),
  };
}

it("reads nothing in an empty field", () => {
  expect(reader().read(kerb, "  ")).toBeUndefined();
});

it("takes a bare number in the unit that stands beside the field", () => {
  expect(reader().read(kerb, "2000")).toMatchObject({ ok: true, value: 2000 });
  // 2,000 lb of 0.45359237 kg each.
  expect(reader("british").read(kerb, "2000")).toMatchObject({ ok: true, value: expect.closeTo(907.18474, 6) });
});

it("takes the hundredweight that was asked for once", () => {
  const { context, read } = reader();
  context.remembered.value = { cwt: "112" };
  // Of 112 lb, ten of them are 1120 × 0.45359237 kg; of 100 lb, 1000 × that.
  expect(read(kerb, "10 cwt")).toMatchObject({ ok: true, value: expect.closeTo(508.0234544, 6) });
  context.remembered.value = { cwt: "100" };
  expect(read(kerb, "10 cwt")).toMatchObject({ ok: true, value: expect.closeTo(453.59237, 6) });
});

it("refuses what the job could not hold, and teeth upside down that it could", () => {
  expect(reader().read("environment.grip_coeff", "40")).toMatchObject({ ok: false });
  // 9/41 is 0.22: the job has room for it, no gearbox has.
  expect(reader().read("driveline.gears.0.gear_ratio", "9/41")).toMatchObject({ ok: false });
  expect(reader().read("driveline.gears.0.gear_ratio", "0.7")).toMatchObject({ ok: true, value: 0.7 });
});
