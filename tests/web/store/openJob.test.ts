import { describe, expect, it } from "vitest";
import { openJobs } from "../../../web/store/jobs.ts";
import { halfTyped, inventedJob } from "../../support/inventedJob.ts";
import { twoPagesOnOneJob } from "./storedJobs.ts";

describe("two tabs on one job", () => {
  it("shows an edit of one in the other, which has nothing unsaved", async () => {
    const { browser, jobs, other } = await twoPagesOnOneJob();
    const before = other.current.value!.arrival;
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(1000);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 175));
    expect(other.current.value!.arrival).toBeGreaterThan(before);
    expect(other.news.value).toContain("Another tab");
    expect(other.conflict.value).toBeUndefined();
  });

  it("never lets the later tab overwrite the earlier: its state becomes a copy and it is asked", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "mine");
    other.commit(inventedJob("Saloon", 300), "theirs");
    await browser.pass(2000);
    const asked = [jobs, other].filter((each) => each.conflict.value !== undefined);
    expect(asked).toHaveLength(1);
    const loser = asked[0]!;
    const { copyId, kind } = loser.conflict.value!;
    expect(kind).toBe("changed");
    expect(loser.current.value?.id).toBe(copyId);
    const again = await openJobs(browser.page().world);
    const kept = [await again.open(id), await again.open(copyId)].map((job) => job.vehicle.load_kg);
    expect(kept.sort()).toEqual([175, 300]);
    expect(browser.shelves.journal.size).toBe(0);
  });

  it("goes on with the copy when mine is kept", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "first");
    other.commit(inventedJob("Saloon", 300), "second");
    await browser.pass(2000);
    const { copyId } = other.conflict.value!;
    other.keepMine();
    other.commit(inventedJob("Saloon", 310), "third");
    await browser.pass(1000);
    expect(other.conflict.value).toBeUndefined();
    expect(await other.open(copyId)).toEqual(inventedJob("Saloon", 310));
    expect(await other.open(id)).toEqual(inventedJob("Saloon", 175));
  });

  it("opens theirs when theirs is taken, and what was typed here can still be brought back", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "first");
    other.commit(inventedJob("Saloon", 300), "second");
    await browser.pass(2000);
    const { copyId } = other.conflict.value!;
    await other.takeTheirs();
    expect(other.conflict.value).toBeUndefined();
    expect(other.current.value).toMatchObject({ id, job: inventedJob("Saloon", 175) });
    expect(other.list.value.find((head) => head.id === copyId)?.shelf).toBe("removed");
    expect(await other.undoRemove()).toBe(copyId);
    expect(await other.open(copyId)).toEqual(inventedJob("Saloon", 300));
  });

  it("does not let a tab that slept write its old state over a newer one", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    jobs.commit(inventedJob("Saloon", 175), "while the other slept");
    await browser.pass(2000);
    // It wakes by a keystroke, before it hears or sees anything.
    other.commit(inventedJob("Saloon", 150), "an old state");
    otherPage.show();
    await browser.pass(2000);
    expect(other.conflict.value?.theirs.version.reason).toBe("while the other slept");
    expect(await jobs.readVersion(id, jobs.list.value.find((head) => head.id === id)!.version.number)).toEqual(
      inventedJob("Saloon", 175),
    );
  });

  it("catches up when it wakes with nothing unsaved", async () => {
    const { browser, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    jobs.commit(inventedJob("Saloon", 175), "while the other slept");
    await browser.pass(2000);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 150));
    otherPage.show();
    await browser.pass(0);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 175));
  });

  it("leaves a job that the other tab deleted, and says it can be brought back", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    await jobs.remove(id);
    await browser.pass(0);
    expect(other.current.value).toBeUndefined();
    expect(other.news.value).toContain("brought back");
  });

  it("makes a job of its own of what is typed on after the other tab deleted the job", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    await jobs.remove(id);
    await browser.pass(0);
    other.saveDraft("title", halfTyped("Sal"));
    await browser.pass(1000);
    expect(other.current.value?.id).not.toBe(id);
    const again = await openJobs(browser.page().world);
    await again.open(other.current.value!.id);
    expect(again.current.value).toMatchObject({ job: inventedJob("Saloon", 150), drafts: { title: halfTyped("Sal") } });
    expect(again.list.value.find((head) => head.id === id)?.shelf).toBe("removed");
  });

  it("keeps unsaved edits of a job that the other tab deleted as a copy", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    await jobs.remove(id);
    other.commit(inventedJob("Saloon", 300), "unaware");
    otherPage.show();
    await browser.pass(2000);
    expect(other.conflict.value?.kind).toBe("removed");
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 300));
    await other.takeTheirs();
    expect(other.current.value).toBeUndefined();
  });

  it("makes a copy of what a dead tab had not saved when the job moved on without it", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    other.commit(inventedJob("Saloon", 300), "never saved");
    otherPage.die();
    jobs.commit(inventedJob("Saloon", 175), "moved on");
    await browser.pass(2000);
    const again = await openJobs(browser.page().world);
    expect(again.recovered).toMatchObject([{ isCopy: true }]);
    expect(again.news.value).toContain("brought back as a job of their own");
    expect(await again.open(again.recovered[0]!.id)).toEqual(inventedJob("Saloon", 300));
    expect(await again.open(id)).toEqual(inventedJob("Saloon", 175));
  });
});
