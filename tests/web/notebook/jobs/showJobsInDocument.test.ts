import { signal } from "@preact/signals-core";
import { expect, it } from "vitest";
import { inputError } from "../../../../shared/problems.ts";
import type { Complaint } from "../../../../web/notebook/jobs/complaintView.ts";
import { showJobs } from "../../../../web/notebook/jobs/showJobs.ts";
import type { JobHead } from "../../../../web/store/database/jobRecord.ts";
import type { Jobs } from "../../../../web/store/jobsDoor.ts";
import { jobHead, jobsPlace } from "../../../support/jobsPlace.ts";

const look = { looked: signal(undefined), open: async () => {}, back: () => {}, takeUp: async () => {} };
const list = [jobHead({ id: "a", title: "Saloon" }), jobHead({ id: "b", title: "Van" })];
/** Until what was begun has come to its end. */
const settled = () => new Promise((resolve) => setTimeout(resolve));

/** The corner over a store in which some things go otherwise than well. */
function corner(stored: Parameters<typeof jobsPlace>[0], others: Partial<Jobs> = {}) {
  const { here, asked } = jobsPlace({ list, ...stored });
  const jobs = new Proxy(here.jobs, {
    get: (target, name) => Reflect.get(others, name) ?? Reflect.get(target, name),
  });
  const complaints: Complaint[] = [];
  const [keeping, place] = [document.createElement("div"), document.createElement("div")];
  const attempt = showJobs(jobs, signal("metric"), { keeping, jobs: place }, look, (found) => complaints.push(found));
  const press = async (words: string) => {
    const all = [...place.querySelectorAll("button")];
    all.find(({ textContent }) => textContent?.replace(/\s+/g, " ").trim() === words)?.click();
    await settled();
  };
  return { place, attempt, complaints, press, asked: () => asked.map(([what, which]) => `${what} ${which}`) };
}

it("ends a complaint by what began after it, not by what had begun before", async () => {
  const { attempt, complaints } = corner({});
  let end: () => void = () => {};
  attempt(() => new Promise<void>((resolve) => (end = resolve)));
  attempt(() => Promise.reject(inputError("test", "packs", "found none")));
  await settled();
  end();
  await settled();
  expect(complaints).toEqual([["packs: found none"]]);
  attempt(() => Promise.resolve());
  await settled();
  expect(complaints.at(-1)).toEqual([]);
});

it("shows what is stored of a job that cannot be opened, unless it is the open one that must be saved first", async () => {
  const refusing = (code: string) =>
    corner(
      {},
      { open: () => Promise.reject(inputError(code, "job", "found a fault")), readText: async () => "{stored}" },
    );
  const damaged = refusing("badJob");
  await damaged.press("Open Van");
  expect(damaged.place.querySelector("li:nth-child(2) pre")?.textContent).toBe("{stored}");
  expect(damaged.complaints).toEqual([["job: found a fault"]]);
  const unsaved = refusing("unsaved");
  await unsaved.press("Open Van");
  expect(unsaved.place.querySelector("pre")).toBeNull();
  expect(unsaved.complaints).toEqual([["job: found a fault"]]);
});

it("opens the next job where the open one was deleted, and offers to bring that back until it is", async () => {
  const now = signal<readonly JobHead[]>(list);
  const putVan = (shelf: JobHead["shelf"]) => {
    now.value = list.map((head) => (head.id === "b" ? { ...head, shelf } : head));
  };
  const remove = async () => putVan("removed");
  const { press, asked, place } = corner({}, { list: now, remove });
  await press("Delete Van");
  expect(asked()).toEqual(["open a"]);
  expect(place.textContent).toContain("One job was deleted.");
  putVan("open");
  expect(place.textContent).not.toContain("One job was deleted.");
});

it("stays with the open job where another one was deleted", async () => {
  const { press, asked } = corner({ current: { id: "a" } });
  await press("Delete Van");
  expect(asked()).toEqual(["remove b"]);
});
