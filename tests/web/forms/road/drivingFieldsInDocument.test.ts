import { html } from "lit-html";
import { expect, it } from "vitest";
import { drivingFields, drivingNote, roadTitleField } from "../../../../web/forms/road/drivingFields.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

it("is calm driving until it is stated, and nothing while one of its figures cannot be read", () => {
  let driving: ReturnType<typeof drivingFields>["driving"];
  const { type } = formPage(demoJob(), (form) => {
    const read = drivingFields(form, "typed");
    driving = read.driving;
    return html`${read.fields}`;
  });
  expect(driving).toEqual({ acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 });
  type("#typed-up", "1,2");
  type("#typed-stand", "1 min");
  expect(driving).toEqual({ acceleration_mps2: 1.2, braking_mps2: 1, stand_s: 60 });
  type("#typed-down", "0");
  expect(driving).toBeUndefined();
});

it("says that it is assumed", () => {
  expect(drivingNote({ acceleration_mps2: 1.2, braking_mps2: 1, stand_s: 60 })).toBe(
    "speeds up at 1.2 m/s2, slows at 1 m/s2, stands 60 s: assumed",
  );
});

it("has a road go by its usual words where none are written, and by 200 letters at most", () => {
  let now: ReturnType<typeof roadTitleField> | undefined;
  const { type } = formPage(demoJob(), (form) => {
    now = roadTitleField(form, "title", "Client's road");
    return now.field;
  });
  expect(now).toMatchObject({ title: "Client's road", problem: undefined });
  type("#title", "  ");
  expect(now?.title).toBe("Client's road");
  type("#title", "a".repeat(200));
  expect(now).toMatchObject({ title: "a".repeat(200), problem: undefined });
  type("#title", "a".repeat(201));
  expect(now?.problem).toBe("found 201 letters, at most 200 can be kept");
});
