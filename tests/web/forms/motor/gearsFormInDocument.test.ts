import { expect, it } from "vitest";
import { gearsForm } from "../../../../web/forms/motor/gearsForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const second = "#field-driveline-gears-1-name";

it("renames a gear among those used as well, in one step", () => {
  const { choose, job, jobEditor } = formPage(demoJob(), gearsForm);
  choose(second, " two ");
  expect(job().driveline.gears[1].name).toBe("two");
  expect(job().driveline.shifting).toMatchObject({ gears: ["two", "third"] });
  jobEditor.undo();
  expect(job()).toEqual(demoJob());
});

it("keeps a name that another gear has in its field, with the reason, and the gear as it was", () => {
  const { choose, job, at, said } = formPage(demoJob(), gearsForm);
  choose(second, "third");
  expect(job()).toEqual(demoJob());
  expect(at(second).value).toBe("third");
  expect(said(`${second}-says`)).toMatch(/^Wrong: .*third/);
  choose(second, "two");
  expect(said(`${second}-says`)).toBe("");
  expect(job().driveline.gears[1].name).toBe("two");
});

it("keeps the last gear", () => {
  const { press, buttons, job } = formPage(demoJob(), gearsForm);
  for (const name of ["first", "second", "fourth"]) press(new RegExp(`^Remove ${name}$`));
  expect(job().driveline.gears.map(({ name }) => name)).toEqual(["third"]);
  expect(buttons().filter((words) => words.startsWith("Remove"))).toEqual([]);
});
