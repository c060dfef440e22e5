import { afterEach, expect, it, vi } from "vitest";
import { firstJob, openFirst } from "../../../../web/notebook/jobs/openFirst.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { jobHead, jobsPlace } from "../../../support/jobsPlace.ts";

afterEach(() => vi.unstubAllGlobals());

/** What is asked of the store as a page opens whose tab kept what `kept` says, where the jobs of `damaged` cannot be read. */
async function asked(kept: () => string | null, damaged: readonly string[] = []): Promise<readonly unknown[]> {
  vi.stubGlobal("sessionStorage", { getItem: kept });
  const list = [jobHead({ id: "new" }), jobHead({ id: "old" }), jobHead({ id: "gone", shelf: "removed" })];
  const place = jobsPlace({ list });
  const { jobs } = place.here;
  const open = async (id: string) => {
    await jobs.open(id);
    if (damaged.includes(id)) throw new Error("cannot be read");
    return demoJob();
  };
  await openFirst(new Proxy(jobs, { get: (target, name) => (name === "open" ? open : Reflect.get(target, name)) }));
  return place.asked.map(([what, which]) => (what === "open" ? which : what));
}

it("opens what this tab had open, else the job changed last, which stands first", async () => {
  expect(await asked(() => "old")).toEqual(["old"]);
  expect(await asked(() => null)).toEqual(["new"]);
});

it("does not open what was deleted", async () => {
  expect(await asked(() => "gone")).toEqual(["new"]);
});

it("goes on to the next where one cannot be read, and begins with the first demo where none can", async () => {
  expect(await asked(() => "old", ["old"])).toEqual(["old", "new"]);
  const all = await asked(() => null, ["old", "new"]);
  expect(all).toEqual(["new", "old", "create"]);
  expect((await firstJob()).title).toBe(demoJob(0).title);
});

it("opens a job where the browser keeps nothing for the page", async () => {
  const refuse = () => {
    throw new Error("denied");
  };
  expect(await asked(refuse)).toEqual(["new"]);
});
