import { html } from "lit-html";
import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { attempt, refusal } from "../../../web/fields/attempt.ts";
import type { Form } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

function page() {
  let form: Form | undefined;
  const shown = formPage(demoJob(), (now) => {
    form = now;
    return html`<div id="here">${refusal(now, "here")}</div><div id="there">${refusal(now, "there")}</div>`;
  });
  const weigh = (place: string, kerb_kg: number) =>
    attempt(form as Form, place, "weighed", ({ job, drafts }) => ({
      job: withPath(job, "vehicle.kerb_kg", kerb_kg),
      drafts,
    }));
  return { ...shown, weigh };
}

it("makes a change that the job takes, says that it is done, and has nothing to say of it", () => {
  const { weigh, job, said } = page();
  expect(weigh("here", 960)).toBe(true);
  expect(job().vehicle.kerb_kg).toBe(960);
  expect(said("#here")).toBe("");
});

it("leaves the job as it was where it refuses, with the reason at the place where it was asked for and nowhere else", () => {
  const { weigh, job, said } = page();
  expect(weigh("here", -5)).toBe(false);
  expect(job().vehicle.kerb_kg).toBe(demoJob().vehicle.kerb_kg);
  expect(said("#here")).toMatch(/^Not done: Kerb weight as it arrives: .*[^.]\.$/);
  expect(said("#there")).toBe("");
});

it("takes its reason away with the next change there that is done, and leaves those of other places", () => {
  const { weigh, said } = page();
  weigh("here", -5);
  weigh("there", -6);
  weigh("here", 960);
  expect(said("#here")).toBe("");
  expect(said("#there")).toMatch(/^Not done: /);
});
