import { expect, it } from "vitest";
import type { Job, Origin } from "../../../shared/job/job.ts";
import { fieldAt } from "../../../web/editing/fieldTable/fieldAt.ts";
import { originChoice } from "../../../web/fields/originChoice.ts";
import type { QuantityFieldSpec } from "../../../web/fields/quantityField.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const kerb = "vehicle.kerb_kg";
const rolling = "vehicle.tyres.rolling_coeff"; // has a usual value, 0.013
const gross = "vehicle.gross_kg"; // has no usual value

function page(path: string, origin: Origin | undefined, change: Partial<QuantityFieldSpec> = {}) {
  const { [path]: _own, ...others } = demoJob().origins;
  const job: Job = { ...demoJob(), origins: { ...others, ...(origin && { [path]: origin }) } };
  const field = { ...(fieldAt(path) as QuantityFieldSpec), ...change };
  return formPage(job, (_, context) => originChoice(context, path, field));
}

it("asks where a value is from that nothing is said of, and takes no answer as none", () => {
  const { texts, choose, job } = page(kerb, undefined);
  expect(texts("option")).toEqual(["from where?", "measured", "handbook", "usual value", "guessed"]);
  choose("select", "");
  expect(job().origins[kerb]).toBeUndefined();
});

it("offers no usual value where there is none, and “typed” only where nobody has said more", () => {
  expect(page(gross, { from: "measured" }).texts("option")).toEqual(["measured", "handbook", "guessed"]);
  expect(page(gross, { from: "typed" }).texts("option")).toEqual(["typed", "measured", "handbook", "guessed"]);
});

it("notes where the value is from and leaves it and its text as they are", () => {
  const { choose, job } = page(kerb, { from: "typed", typed: "18 3/4 cwt" });
  choose("select", "measured");
  expect(job().origins[kerb]).toEqual({ from: "measured", typed: "18 3/4 cwt" });
  expect(job().vehicle.kerb_kg).toBe(demoJob().vehicle.kerb_kg);
});

it("puts the usual value in where that is chosen", () => {
  const { choose, job } = page(rolling, { from: "measured", typed: "0.0136" });
  choose("select", "usual");
  expect(job().vehicle.tyres.rolling_coeff).toBe(0.013);
  expect(job().origins[rolling]).toEqual({ from: "usual" });
});

it("is called by the field's name, where its label is a question by that of its path", () => {
  expect(page(kerb, undefined).said("label")).toBe("Where Kerb weight as it arrives comes from");
  expect(page(kerb, undefined, { label: "How heavy is it?" }).said("label")).toBe(
    "Where Kerb weight as it arrives comes from",
  );
});
