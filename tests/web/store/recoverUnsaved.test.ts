import { describe, expect, it } from "vitest";
import { openJobs } from "../../../web/store/jobs.ts";
import { inventedJob } from "../../support/inventedJob.ts";
import { onePage, twoPagesOnOneJob } from "./storedJobs.ts";

describe("two tabs that open at once after a third died", () => {
  it("bring its edits back once: into the job", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    jobs.commit(inventedJob("Saloon", 175), "never saved");
    page.die();
    const both = await Promise.all([openJobs(browser.page().world), openJobs(browser.page().world)]);
    expect(both.flatMap(({ recovered }) => recovered)).toHaveLength(1);
    expect(browser.shelves.jobs.size).toBe(1);
    expect(browser.shelves.journal.size).toBe(0);
    expect(await both[0].open(id)).toEqual(inventedJob("Saloon", 175));
  });

  it("bring its edits back once: into one copy", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    other.commit(inventedJob("Saloon", 300), "never saved");
    otherPage.die();
    jobs.commit(inventedJob("Saloon", 175), "moved on");
    await browser.pass(2000);
    const both = await Promise.all([openJobs(browser.page().world), openJobs(browser.page().world)]);
    expect(both.flatMap(({ recovered }) => recovered)).toHaveLength(1);
    expect(both.map(({ status }) => status.value.kind)).toEqual(["idle", "idle"]);
    expect([...browser.shelves.jobs.keys()]).toHaveLength(2);
    expect(browser.shelves.journal.size).toBe(0);
    expect(await jobs.open(id)).toEqual(inventedJob("Saloon", 175));
  });
});
