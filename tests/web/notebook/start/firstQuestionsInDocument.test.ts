import { render } from "lit-html";
import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { bodies } from "../../../../shared/parts/bodies.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import type { FirstAnswer } from "../../../../web/notebook/start/firstQuestions.ts";
import { questionsView } from "../../../../web/notebook/start/firstQuestions.ts";
import { ownCar } from "../../../../web/notebook/start/ownCar.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const none: FirstAnswer = { answer: "", doubt: "", measureFirst: [], failure: undefined };

/** The questions for a job, drawn anew each time they are looked at. */
function questions(job: Job, found: FirstAnswer = none) {
  const jobEditor = createJobEditor({ job, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  const draw = () => {
    render(questionsView(context, found), place);
    return place;
  };
  const choose = (id: string, key: string) => {
    const select = draw().querySelector(`#first-${id}`) as HTMLSelectElement;
    select.value = key;
    select.dispatchEvent(new Event("change"));
  };
  const fitting = () =>
    [...draw().querySelectorAll("button")].find(({ textContent }) => /^\s*Fit motor/.test(textContent ?? ""));
  return { draw, choose, fitting, jobEditor, job: () => jobEditor.job.value };
}

it("asks whether the two days have changed places where the longest is shorter, and not where it is as long", () => {
  const isAsked = (longestDay_km: number) =>
    questions({ ...ownCar(), usualDay_km: 40, longestDay_km })
      .draw()
      .querySelector(".to-mend") !== null;
  expect([isAsked(39), isAsked(40), isAsked(41)]).toEqual([true, false, false]);
});

it("takes the drag of the shape that is picked, and offers no shape as picked whose drag was entered", () => {
  const { choose, job, draw, jobEditor } = questions(ownCar());
  const box = bodies.find(({ id }) => id === "box-body");
  choose("shape", "box-body");
  expect(job().vehicle.roadLoad).toEqual(box?.data);
  expect((draw().querySelector("#first-shape") as HTMLSelectElement).value).toBe("box-body");
  const entered = { ...job().vehicle.roadLoad, drag_coeff: 0.123 } as Job["vehicle"]["roadLoad"];
  jobEditor.change("Drag", (state) => ({
    ...state,
    job: { ...state.job, vehicle: { ...state.job.vehicle, roadLoad: entered } },
  }));
  const select = draw().querySelector("#first-shape") as HTMLSelectElement;
  expect([select.value, select.selectedOptions[0]?.textContent]).toEqual(["", "as entered below"]);
  choose("shape", "");
  expect(job().vehicle.roadLoad).toEqual(entered);
});

it("fits motor and packs as long as nobody has chosen them, and asks for the figures of what is bought", () => {
  expect(questions(demoJob()).fitting()).toBeUndefined();
  const { fitting, choose, job, draw } = questions(ownCar());
  const fields = () => draw().querySelectorAll("input").length;
  const before = fields();
  fitting()?.click();
  expect(job().motor.origin).toContain("scaled to the car's weight");
  choose("bought", "motor");
  expect(fields()).toBeGreaterThan(before);
  expect(fitting()).toBeUndefined();
});

it("says the first answer, that it is on its way, or why there is none", () => {
  const sentence = (changes: Partial<FirstAnswer>) =>
    questions(ownCar(), { ...none, ...changes })
      .draw()
      .querySelector(".sentence")?.textContent;
  expect(sentence({})).toBe("Calculating the first answer …");
  expect(sentence({ answer: "13 kWh is enough." })).toBe("13 kWh is enough.");
  expect(sentence({ answer: "old", failure: { words: "The road is empty." } })).toBe("The road is empty.");
});
