import { openJobs } from "../../../web/store/jobs.ts";
import { inventedJob } from "../../support/inventedJob.ts";
import { inventedBrowser, type PageOptions } from "../../support/inventedWorld.ts";

export async function onePage(options: PageOptions = {}) {
  const browser = inventedBrowser();
  const page = browser.page(options);
  const jobs = await openJobs(page.world);
  return { browser, page, jobs };
}

export async function twoPagesOnOneJob() {
  const { browser, page, jobs } = await onePage();
  const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
  const otherPage = browser.page();
  const other = await openJobs(otherPage.world);
  await other.open(id);
  await browser.pass(3000); // both have looked for the journals of dead pages
  return { browser, id, page, jobs, otherPage, other };
}
