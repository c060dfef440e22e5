import { expect, it } from "vitest";
import type { BroughtMap } from "../../../../web/fields/staging.ts";
import { readMap } from "../../../../web/forms/motor/bringMap.ts";
import { motorMapForm } from "../../../../web/forms/motor/motorMapForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const full = "rpm,20,60,120\n1000,78,76,70\n3000,86,89,87\n8000,84,88,\n";
const small = "rpm,20,60\n1000,78,76\n3000,86,89\n";

function page(brought: BroughtMap) {
  const shown = formPage(demoJob(), motorMapForm);
  shown.context.view.staging.map.value = brought;
  return shown;
}

it("says how a map was understood, and takes it only when that is asked for", async () => {
  const { texts, press, job, buttons } = page(await readMap("map.csv", full));
  // No speed and no torque are put before those of the file.
  expect(texts("li")[0]).toMatch(/^4 speeds up to 8000 rpm and 4 torques up to 120 Nm, /);
  expect(texts("li").join()).not.toContain("a guess");
  expect(job()).toEqual(demoJob());
  press(/^Take it/);
  expect(job().motor.loss.kind).toBe("lossTable");
  expect(buttons()).toEqual([]);
});

it("says that it is a guess beyond a map that ends well before the motor does", async () => {
  // The demo's motor has 120 Nm and 8000 rpm.
  const { texts } = page(await readMap("map.csv", small));
  expect(texts("li").at(-1)).toMatch(/^the motor goes up to 120 Nm and 8000 rpm: .* a guess\.$/);
});

it("says what is wrong with a file that is no map, and discards it with the job as it was", async () => {
  const { said, texts, press, job, buttons } = page(await readMap("words.csv", "good,better\nbest,fair\n"));
  expect(said(".to-mend")).toBe("words.csv could not be read as a motor map; the job is as it was.");
  expect(texts("li").length).toBeGreaterThan(0);
  press(/^Discard$/);
  expect(buttons()).toEqual([]);
  expect(job()).toEqual(demoJob());
});
