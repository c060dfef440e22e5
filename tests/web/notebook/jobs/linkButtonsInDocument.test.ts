import { render } from "lit-html";
import { expect, it } from "vitest";
import { linkButtons } from "../../../../web/notebook/jobs/linkButtons.ts";
import type { LinkState } from "../../../../web/store/files/linkedFile.ts";
import { jobsPlace } from "../../../support/jobsPlace.ts";

const name = "saloon.json";
const states: readonly (readonly [LinkState, readonly string[]])[] = [
  [{ kind: "none" }, ["linkFile"]],
  [{ kind: "linked", name }, ["unlinkFile"]],
  [{ kind: "asks", name }, ["allowFile", "unlinkFile"]],
  [{ kind: "changedOutside", name }, ["overwriteFile", "unlinkFile"]],
  [{ kind: "failed", name, message: "the disk is full" }, ["unlinkFile"]],
];

it.each(states)("offers with a file that is %o what can be done about it, and no more", (fileLink, wanted) => {
  const { here, asked } = jobsPlace({ fileLink });
  const place = document.createElement("p");
  render(linkButtons(here), place);
  for (const button of place.querySelectorAll("button")) button.click();
  expect(asked.map(([what]) => what)).toEqual(wanted);
  // How the file stands is said by its name, where there is one.
  expect(place.querySelector(".aside")?.textContent?.includes(name) ?? false).toBe(fileLink.kind !== "none");
});
