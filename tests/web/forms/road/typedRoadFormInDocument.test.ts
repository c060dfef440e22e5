import { expect, it } from "vitest";
import { typedRoadForm } from "../../../../web/forms/road/typedRoadForm.ts";
import type { Answer, MadeRoad } from "../../../../web/worker/roads/roadsApi.ts";
import { answered, answeringRoads, madeRoad } from "../../../support/broughtLog.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const field = "#typed-road";
const says = "#typed-road-says";
const done: Answer<MadeRoad> = { kind: "done", value: { ...madeRoad, distance_m: 12_000, duration_s: 1440 } };
const refusal: Answer<MadeRoad> = {
  kind: "refused",
  problems: [{ code: "x", where: "piece 2", message: "found no speed" }],
};

function page(answer: Answer<MadeRoad>) {
  const typedRoad = async () => answer;
  return formPage(demoJob(), typedRoadForm, answeringRoads({ typedRoad }));
}

it("says once the field is left how it was read, and forgets that with the next letter", async () => {
  const { type, fire, said, job } = page(done);
  type(field, "12 km at 30 km/h");
  expect(said(says)).toBe("");
  fire(field, "change");
  await answered();
  expect(said(says)).toBe("12 km in 24 min"); // 1440 s
  expect(job()).toEqual(demoJob());
  type(field, "12 km at 30 km/h, 2 stops");
  expect(said(says)).toBe("");
});

it("says once the field is left why it cannot be read, and no more of it once it is empty", async () => {
  const { type, fire, said } = page(refusal);
  type(field, "12 km");
  fire(field, "change");
  await answered();
  expect(said(says)).toBe("Wrong: piece 2: found no speed.");
  type(field, "");
  expect(said(says)).toBe("");
});

it("says nothing of a text that is another one by the time that it is read", async () => {
  const { type, fire, said } = page(done);
  type(field, "12 km at 30 km/h");
  fire(field, "change");
  type(field, "1");
  await answered();
  expect(said(says)).toBe("");
});

it("makes a road that is guessed, with what was typed in one line", async () => {
  const { type, press, job } = page(done);
  type(field, " 3 km at 50 km/h\n 9 km at 80 km/h ");
  press(/^Use this road$/);
  await answered();
  expect(job().drivenRoad).toBe("typed-1");
  expect(job().origins[`roads.${job().roads.length - 1}`]).toMatchObject({
    from: "guessed",
    typed: "3 km at 50 km/h; 9 km at 80 km/h",
  });
});

it("leaves the job as it was where the road is refused, with the reason", async () => {
  const { type, press, job, said } = page(refusal);
  type(field, "12 km");
  press(/^Use this road$/);
  await answered();
  expect(job().roads).toEqual(demoJob().roads);
  expect(said(".refused")).toBe("Not done: piece 2: found no speed.");
});
