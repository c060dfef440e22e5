import { render } from "lit-html";
import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { freeze, withPrediction } from "../../../../sim/index.ts";
import { predictionView } from "../../../../web/notebook/paper/predictionView.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

const job = demoJob();
const { runs, answer } = sectionValues(job);
const now = () => new Date("2026-03-03T09:30:00.000Z");

/** The view on a page that changes its job, or that is only looked at. */
function shown(of: Job, isBandKnown: boolean | undefined, isWritten = true) {
  let kept = of;
  const steps: string[] = [];
  const change = (what: string, how: (present: Job) => Job) => {
    steps.push(what);
    kept = how(kept);
  };
  const reports = isBandKnown === undefined ? undefined : { runs, answer: { ...answer, isBandKnown } };
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  render(predictionView({ job: of, reports, change: isWritten ? change : undefined, now }), place);
  return { place, button: place.querySelector("button"), steps, kept: () => kept };
}

it("freezes what is predicted now, with what it is for, as one step", () => {
  const { place, button, steps, kept } = shown(job, true);
  expect(button?.textContent?.trim()).toBe("Freeze as predicted");
  const note = place.querySelector("#prediction-note") as HTMLInputElement;
  note.value = "x".repeat(201);
  button?.click();
  expect(steps).toEqual(["Prediction frozen"]);
  // The page takes 200 letters; so does what is frozen, however they came into the field.
  expect(kept().predictions).toMatchObject([{ at: "2026-03-03T09:30:00.000Z", note: "x".repeat(200) }]);
});

it("freezes nothing before the bands are known or while nothing of the job now is driven", () => {
  expect(shown(job, true).button?.disabled).toBe(false);
  expect(shown(job, false).button?.disabled).toBe(true);
  expect(shown(job, undefined).button?.disabled).toBe(true);
});

it("offers another one beside one that is frozen, and says what that was for", () => {
  const frozen = withPrediction(job, freeze(job, { runs, answer }, now().toISOString(), "the quote"));
  const { place, button } = shown(frozen, true);
  expect(button?.textContent?.trim()).toBe("Freeze another prediction");
  expect(place.textContent).toContain("3 March 2026");
  expect(place.textContent).toContain("For: the quote.");
});

it("has nothing to press on a page that is only looked at", () => {
  const { place, button } = shown(job, true, false);
  expect(button).toBeNull();
  expect(place.textContent).toContain("No prediction is frozen yet.");
});
