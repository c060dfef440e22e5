import { describe, expect, it } from "vitest";
import type { JobHead } from "../../../../web/store/database/jobRecord.ts";
import type { JobStore } from "../../../../web/store/database/jobStore.ts";
import { type FileHandle, writeLinkedFile } from "../../../../web/store/files/linkedFile.ts";
import { openJobs } from "../../../../web/store/jobs.ts";
import { newHead } from "../../../../web/store/newHead.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { inventedBrowser } from "../../../support/inventedWorld.ts";

/** A file on an invented disk, whose date moves by one at every writing. */
function inventedFile(permission: PermissionState = "granted") {
  const disk = { text: "", date_ms: 100, permission, isFull: false };
  const handle: FileHandle = {
    name: "s.bellhousing.json",
    getFile: async () => ({ lastModified: disk.date_ms, text: async () => disk.text }),
    createWritable: async () => {
      let draft = "";
      return {
        write: async (text) => {
          if (disk.isFull) throw new Error("the disk is full");
          draft += text;
        },
        close: async () => {
          disk.text = draft;
          disk.date_ms += 1;
        },
      };
    },
    queryPermission: async () => disk.permission,
    requestPermission: async () => {
      disk.permission = "granted";
      return disk.permission;
    },
  };
  return { disk, handle };
}

function head(fileDate_ms?: number): JobHead {
  const made = newHead({ id: "j", title: "S", line: "", session: "a", now_ms: 0, reason: "" });
  if (fileDate_ms === undefined) return made;
  return { ...made, editCount: 4, file: { name: "s", savedAt_ms: 0, editCount: 1, fileDate_ms } };
}

describe("writing a linked file", () => {
  it("writes, and says when and after how many edits", async () => {
    const { disk, handle } = inventedFile();
    const outcome = await writeLinkedFile(handle, head(100), "text", 50, false);
    expect(disk.text).toBe("text");
    expect(outcome.state).toEqual({ kind: "linked", name: handle.name, savedAt_ms: 50 });
    expect(outcome.copy).toEqual({ name: handle.name, savedAt_ms: 50, editCount: 4, fileDate_ms: 101 });
  });

  it("does not write without permission", async () => {
    const { disk, handle } = inventedFile("prompt");
    expect((await writeLinkedFile(handle, head(), "text", 0, false)).state.kind).toBe("asks");
    expect(disk.text).toBe("");
  });

  it("does not write over a file that somebody else changed, until it is forced", async () => {
    const { disk, handle } = inventedFile();
    disk.text = "theirs";
    expect((await writeLinkedFile(handle, head(99), "mine", 0, false)).state.kind).toBe("changedOutside");
    expect(disk.text).toBe("theirs");
    expect((await writeLinkedFile(handle, head(99), "mine", 0, true)).state.kind).toBe("linked");
    expect(disk.text).toBe("mine");
  });

  it("takes a file of another date with the same text for no change", async () => {
    const { disk, handle } = inventedFile();
    disk.text = "mine";
    expect((await writeLinkedFile(handle, head(99), "mine", 0, false)).state.kind).toBe("linked");
  });

  it("says what the disk said, and finds out a file that does not hold what was written", async () => {
    const { disk, handle } = inventedFile();
    disk.isFull = true;
    expect((await writeLinkedFile(handle, head(), "text", 0, false)).state).toMatchObject({
      message: "the disk is full",
    });
    disk.isFull = false;
    const lying = { ...handle, getFile: async () => ({ lastModified: 1, text: async () => "something else" }) };
    expect((await writeLinkedFile(lying, head(), "text", 0, false)).state.kind).toBe("failed");
  });
});

describe("a job linked to a file", () => {
  it("is saved along as typed, and asks again in the next session", async () => {
    const { disk, handle } = inventedFile();
    const browser = inventedBrowser();
    const page = browser.page({ chooseFile: async () => handle, between: asDatabase });
    const jobs = await openJobs(page.world);
    expect(jobs.canLinkFile).toBe(true);
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await jobs.linkFile();
    expect(JSON.parse(disk.text)).toEqual(inventedJob("Saloon", 150));
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(4000);
    expect(JSON.parse(disk.text)).toEqual(inventedJob("Saloon", 175));
    expect(jobs.fileLink.value.kind).toBe("linked");
    page.die();

    disk.permission = "prompt";
    const again = await openJobs(browser.page({ chooseFile: async () => handle, between: asDatabase }).world);
    await again.open(id);
    expect(again.fileLink.value).toEqual({ kind: "asks", name: handle.name });
    again.commit(inventedJob("Saloon", 180), "load");
    await browser.pass(4000);
    expect(JSON.parse(disk.text)).toEqual(inventedJob("Saloon", 175));
    await again.allowFile();
    expect(JSON.parse(disk.text)).toEqual(inventedJob("Saloon", 180));
  });

  it("stops when it is unlinked, and for good", async () => {
    const { disk, handle } = inventedFile();
    const browser = inventedBrowser();
    const jobs = await openJobs(browser.page({ chooseFile: async () => handle, between: asDatabase }).world);
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await jobs.linkFile();
    await jobs.unlinkFile();
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(4000);
    expect(JSON.parse(disk.text)).toEqual(inventedJob("Saloon", 150));
    await jobs.open(id);
    expect(jobs.fileLink.value.kind).toBe("none");
  });

  it("does not follow into another job that is opened", async () => {
    const { disk, handle } = inventedFile();
    const browser = inventedBrowser();
    const jobs = await openJobs(browser.page({ chooseFile: async () => handle, between: asDatabase }).world);
    await jobs.create(inventedJob("Linked", 150), "the demo");
    await jobs.linkFile();
    await jobs.create(inventedJob("Free", 150), "the demo");
    jobs.commit(inventedJob("Free", 175), "load");
    await browser.pass(4000);
    expect(JSON.parse(disk.text)).toMatchObject({ title: "Linked" });
  });
});

/** The store in memory under the other's name: tying is only offered where it lasts. */
function asDatabase(store: JobStore): JobStore {
  return { ...store, kind: "database" };
}
