import { expect, it, vi } from "vitest";
import { externaliseLists } from "../../../../web/store/database/externalLists.ts";
import { memoryStore } from "../../../../web/store/database/memoryStore.ts";
import { fileLink } from "../../../../web/store/files/fileLink.ts";
import type { FileHandle } from "../../../../web/store/files/linkedFile.ts";
import type { JobShelf } from "../../../../web/store/jobShelf.ts";
import { newHead } from "../../../../web/store/newHead.ts";
import type { Saver } from "../../../../web/store/saver.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { inventedBrowser } from "../../../support/inventedWorld.ts";

/** A link of one job over an invented disk; `chosen` is what the person chooses. */
async function linked(permission: PermissionState | undefined = "granted") {
  const disk = { texts: [] as string[], permission };
  const handle: FileHandle = {
    name: "s.json",
    getFile: async () => ({ lastModified: disk.texts.length, text: async () => disk.texts.at(-1) ?? "" }),
    createWritable: async () => ({ write: async (text) => void disk.texts.push(text), close: async () => {} }),
    ...(permission !== undefined && {
      queryPermission: async () => disk.permission ?? "prompt",
      requestPermission: async () => disk.permission ?? "prompt",
    }),
  };
  const browser = inventedBrowser();
  const { world } = browser.page({ chooseFile: async () => handle });
  const store = memoryStore(browser.shelves);
  let load_kg = 150;
  let head = newHead({ id: "j1", title: "Saloon", line: "", session: "a", now_ms: 0, reason: "" });
  await store.add({ head, job: externaliseLists(inventedJob()), drafts: {} });
  const amend = vi.fn<JobShelf["amend"]>(async (_, { file }) => {
    head = { ...head, ...(file && { file }) };
  });
  const saver = {
    head: () => head,
    mine: () => ({ job: inventedJob("Saloon", load_kg), drafts: {} }),
    flush: async () => {},
  } as unknown as Saver;
  const link = fileLink(store, world, { amend } as unknown as JobShelf);
  const type = (next_kg: number) => {
    load_kg = next_kg;
    link.follow(false);
  };
  const loads = () => disk.texts.map((text) => (JSON.parse(text) as { vehicle: { load_kg: number } }).vehicle.load_kg);
  return { link, saver, store, handle, disk, browser, amend, type, loads };
}

it("writes once for edits in a row, two seconds after the last, and remembers the copy", async () => {
  const { link, saver, browser, type, loads, amend } = await linked();
  await link.choose(saver);
  expect(loads()).toEqual([150]);
  type(160);
  await browser.pass(1900);
  type(170);
  await browser.pass(1900);
  expect(loads()).toEqual([150]);
  await browser.pass(200);
  expect(loads()).toEqual([150, 170]);
  expect(amend).toHaveBeenCalledTimes(2);
  expect(link.state.value.kind).toBe("linked");
});

it("writes at once where the page is about to go", async () => {
  const { link, saver, browser, loads } = await linked();
  await link.choose(saver);
  link.follow(true);
  await browser.pass(0);
  expect(loads()).toEqual([150, 150]);
});

it("takes up a stored link, and waits to be asked where the browser has not said yes", async () => {
  for (const [permission, kind] of [
    ["granted", "linked"],
    [undefined, "linked"], // a browser that has no such question
    ["prompt", "asks"],
  ] as const) {
    const { link, saver, store, handle } = await linked(permission);
    await store.putHandle("j1", handle);
    await link.resume(saver);
    expect(link.state.value).toEqual({ kind, name: "s.json" });
  }
});

it("writes nothing more of a job that is no longer the open one, and keeps its link stored", async () => {
  const { link, saver, store, handle, browser, type, loads } = await linked();
  await link.choose(saver);
  type(160);
  link.rest();
  await browser.pass(5000);
  expect(loads()).toEqual([150]);
  expect(link.state.value).toEqual({ kind: "none" });
  expect(await store.readHandle("j1")).toBe(handle);
  await link.resume(saver);
  await link.letGo();
  expect(await store.readHandle("j1")).toBeUndefined();
});
