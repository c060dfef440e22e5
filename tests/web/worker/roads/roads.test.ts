import { expect, it } from "vitest";
import { roads } from "../../../../web/worker/roads/roads.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const file = (text: string) => new File([text], "job.json");

it("has nothing to give up or to forget before anything was asked", async () => {
  await expect(roads.cancel()).resolves.toBeUndefined();
  await expect(roads.discard()).resolves.toBeUndefined();
});

it("reads a job from a file, and refuses one that is none with its reasons", async () => {
  const job = inventedJob("Saloon", 175);
  expect(await roads.job(file(JSON.stringify(job)))).toEqual({ kind: "done", value: job });
  const refused = await roads.job(file('{ "format": "something else" }'));
  expect(refused.kind).toBe("refused");
  expect(refused.kind === "refused" && refused.problems.length).toBeGreaterThan(0);
});

it("puts a question to the work on logs, which answers with a refusal where it has no log", async () => {
  const answer = await roads.view("whole");
  expect(answer).toMatchObject({ kind: "refused" });
});
