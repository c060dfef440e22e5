import { expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { modules } from "../../../../shared/parts/modules.ts";
import { moduleForm, modulePicker } from "../../../../web/forms/pack/moduleForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

it("starts a heat limit at about 1 kJ/K for each kilogram of the module", () => {
  const job = withPath(withPath(demoJob(), "module.heat", undefined), "module.mass_kg", 11.26);
  const { press, job: now } = formPage(job, moduleForm);
  press(/^Add the heat limit$/);
  expect(now().module.heat?.capacity_kJpK).toBe(11.3);
});

it("warns of a module of another voltage, since the packs keep their numbers, and of no other", () => {
  const full = ({ data }: (typeof modules)[number]) => data.seriesCells * data.cellMax_V;
  const now_V = demoJob().module.seriesCells * demoJob().module.cellMax_V;
  expect(now_V).toBeCloseTo(25.2, 9); // six cells of 4.2 V
  const same = modules.find((each) => full(each) === now_V);
  const other = modules.find((each) => Math.abs(full(each) / now_V - 1) > 0.02);
  if (!same || !other) throw new Error("no such modules among the parts");
  const { choose, has } = formPage(demoJob(), modulePicker);
  choose("#pick-module", same.id);
  expect(has(".offer .to-mend")).toBe(false);
  choose("#pick-module", other.id);
  expect(has(".offer .to-mend")).toBe(true);
});
