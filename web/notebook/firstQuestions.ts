import { html, type TemplateResult } from "lit-html";
import { bodies } from "../../shared/parts/bodies.ts";
import { createForm, type Paper } from "../inputs/form.ts";
import { viewChoice } from "../inputs/viewChoice.ts";
import { withBody } from "./ownCar.ts";

/** What is known so far, for below the questions. */
export interface FirstAnswer {
  readonly answer: string;
  readonly doubt: string;
}

/**
 * The first visit, as part of the page: what this is in three sentences, and a first question. Below it the way to a car
 * of one's own.
 */
export function welcomeView(paper: Paper, start: () => void): TemplateResult {
  const form = createForm({ ...paper, idPrefix: "welcome-" });
  return html`<div class="welcome">
    <p>
      This is a worked example: an invented car, its owner's roads, and the packs that could go in. Everything on the page
      can be changed, and whatever depends on it follows at once. It is worked out and kept in this browser, and sent
      nowhere.
    </p>
    <p>To begin: how far does the car go on an ordinary day? Change it, and see which pack is still enough.</p>
    ${form.fields("usualDay_km")}
    <p class="buttons"><button type="button" @click=${start}>Start with your own car</button></p>
  </div>`;
}

/** Ten questions of the first phone call. Each is a field of the job itself, so nothing has to be finished or sent off. */
export function questionsView(paper: Paper, isOpen: boolean, { answer, doubt }: FirstAnswer): TemplateResult {
  const form = createForm({ ...paper, idPrefix: "first-" });
  const { desk, view } = paper;
  const { roadLoad } = form.job.vehicle;
  const body = bodies.find(
    ({ data }) =>
      roadLoad.kind === "physical" &&
      data.drag_coeff === roadLoad.drag_coeff &&
      data.frontalArea_m2 === roadLoad.frontalArea_m2,
  );
  const shapes = bodies.map(({ id, title }) => ({ key: id, words: title }));
  return html`<details class="first-questions" ?open=${isOpen}>
    <summary>Ten questions for a first answer</summary>
    <div class="jobs-body">
      <p>Whatever you don't know, leave empty or write “unknown”: a usual value stands in, and is counted as a doubt.</p>
      <ol>
        <li>${form.fields(form.field("vehicle.name", "What car is it?"))}</li>
        <li>${form.fields(form.field("use", "What is it for? In the client's own words"))}</li>
        <li>${form.fields(form.field("usualDay_km", "How far on an ordinary day?"))}</li>
        <li>${form.fields(form.field("longestDay_km", "How far on the longest day of the year?"))}</li>
        <li>
          ${form.fields(
            viewChoice(
              "first-shape",
              "What shape is it?",
              body ? shapes : [{ key: "", words: "as measured" }, ...shapes],
              body?.id ?? "",
              (id) => {
                const chosen = bodies.find((each) => each.id === id);
                if (chosen)
                  desk.change("Shape of the car", ({ job, drafts }) => ({ job: withBody(job, chosen), drafts }));
              },
            ),
          )}
        </li>
        <li>${form.fields(form.field("vehicle.arriving_kg", "What does it weigh, nobody aboard?"))}</li>
        <li>${form.fields(form.field("vehicle.load_kg", "What do people and luggage weigh?"))}</li>
        <li>${form.fields(form.field("vehicle.tyres.loadedRadius_mm", "What is written on the tyres?"))}</li>
        <li>${form.fields(form.field("driveline.finalDrive_ratio", "What is the final drive?"))}</li>
        <li>
          ${form.fields(
            viewChoice(
              "first-road",
              "Where does it mostly go?",
              form.job.roads.map(({ id, title }) => ({ key: id, words: title })),
              view.roadId.value,
              (id) => {
                desk.editPlain("drivenRoad", id, "The road to drive");
              },
            ),
          )}
        </li>
      </ol>
      <p class="sentence">${answer === "" ? "The first answer is being worked out …" : answer}</p>
      <p>${doubt}</p>
      <p class="aside">All of it, and more, stands further down, with the figures.</p>
    </div>
  </details>`;
}
