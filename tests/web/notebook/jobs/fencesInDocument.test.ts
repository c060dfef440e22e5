import { expect, it } from "vitest";
import { fences } from "../../../../web/notebook/jobs/fences.ts";

it("closes what a person gives, once, and opens it as it was", () => {
  document.body.innerHTML = '<div class="f"><input></div><p></p><div class="f"><input disabled></div>';
  const before = document.body.innerHTML;
  const around = fences(document.body, ".f");
  around.close();
  const closed = document.body.innerHTML;
  around.close();
  expect(document.body.innerHTML).toBe(closed);
  expect([...document.querySelectorAll("fieldset")].map(({ disabled }) => disabled)).toEqual([true, true]);
  expect([...document.querySelectorAll("input")].every((field) => field.matches(":disabled"))).toBe(true);
  around.open();
  expect(document.body.innerHTML).toBe(before);
});
