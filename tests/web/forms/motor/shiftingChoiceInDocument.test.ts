import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { shiftingChoice } from "../../../../web/forms/motor/shiftingChoice.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

// Gears first to fourth; second and third used, changed up at 32 km/h.
function page(shifting?: Job["driveline"]["shifting"]) {
  const job = demoJob();
  const shown = formPage({ ...job, driveline: { ...job.driveline, ...(shifting && { shifting }) } }, shiftingChoice);
  const tick = (gear: number, isOn: boolean) => {
    shown.at(`#field-gear-used-${gear}`).checked = isOn;
    shown.fire(`#field-gear-used-${gear}`, "change");
    return shown.job().driveline.shifting;
  };
  return { ...shown, tick };
}

it("adds gears in their own order, each with a speed 20 km/h above the one before", () => {
  const { tick } = page();
  expect(tick(3, true)).toEqual({ kind: "bySpeed", gears: ["second", "third", "fourth"], up_kmh: [32, 52] });
  expect(tick(0, true)).toEqual({
    kind: "bySpeed",
    gears: ["first", "second", "third", "fourth"],
    up_kmh: [32, 52, 72],
  });
});

it("starts at 30 km/h where a single gear was used before", () => {
  const { tick, has } = page({ kind: "fixed", gear: "third" });
  expect(has("#field-driveline-shifting-up_kmh-0")).toBe(false);
  expect(tick(3, true)).toEqual({ kind: "bySpeed", gears: ["third", "fourth"], up_kmh: [30] });
  expect(has("#field-driveline-shifting-up_kmh-0")).toBe(true);
});

it("is one gear for everything once only one is left, and that one stays", () => {
  const { tick, at } = page();
  expect(tick(1, false)).toEqual({ kind: "fixed", gear: "third" });
  expect(at("#field-gear-used-2").disabled).toBe(true);
  expect(tick(2, false)).toEqual({ kind: "fixed", gear: "third" });
});
