import { expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { readElsewhere } from "../../../web/worker/readElsewhere.ts";
import type { RoadsApi } from "../../../web/worker/roads/roadsApi.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const job = inventedJob("Invented estate");
const problem = { code: "badJob", where: "file", message: "found no job" };

/** How many files the worker was asked for, and what it answers. */
function worker(answer: Awaited<ReturnType<RoadsApi["job"]>>) {
  const asked: unknown[] = [];
  const read = readElsewhere({
    job: async (file) => {
      asked.push(file);
      return answer;
    },
  });
  return { read, asked };
}

it("reads a small file at once and a large one in the worker", async () => {
  const { read, asked } = worker({ kind: "done", value: inventedJob("From the worker") });
  const text = JSON.stringify(job);
  expect((await read(new File([text], "a.json"))).title).toBe("Invented estate");
  expect(asked).toHaveLength(0);
  const large = new File([text, " ".repeat(1e6)], "b.json");
  expect((await read(large)).title).toBe("From the worker");
  expect(asked).toEqual([large]);
});

it("refuses with the worker's reasons", async () => {
  const { read } = worker({ kind: "refused", problems: [problem] });
  const refused = await read(new File([" ".repeat(1e6 + 1)], "b.json")).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(InputError);
  expect(refused).toMatchObject({ problems: [problem] });
});
