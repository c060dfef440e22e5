import { describe, expect, it } from "vitest";
import { jobText } from "../../../../shared/job/jobText.ts";
import { InputError } from "../../../../shared/problems.ts";
import { type FileLike, readJobFile } from "../../../../web/store/files/readJobFile.ts";
import { inventedJob, withRecordedRoad } from "../../../support/inventedJob.ts";

function fileOf(bytes: Uint8Array, size = bytes.length): FileLike {
  return { name: "a.json", size, arrayBuffer: async () => bytes.slice().buffer };
}

async function codesOf(file: FileLike): Promise<string[]> {
  const error = await readJobFile(file).catch((thrown: unknown) => thrown);
  if (!(error instanceof InputError)) throw new Error(`no InputError: ${error}`);
  return error.problems.map(({ code }) => code);
}

const utf8 = (text: string) => new TextEncoder().encode(text);

describe("a job file", () => {
  it("is read, with or without a byte order mark", async () => {
    const text = jobText(inventedJob());
    expect(await readJobFile(fileOf(utf8(text)))).toEqual(inventedJob());
    expect(await readJobFile(fileOf(utf8(`\ufeff${text}`)))).toEqual(inventedJob());
  });

  it.each([
    ["empty", new Uint8Array(), "empty"],
    ["a photograph", Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a), "notText"],
    ["a cut job", utf8(jobText(inventedJob()).slice(0, 500)), "notJson"],
    ["another JSON", utf8("[1, 2]"), "notAJob"],
    ["a newer job", utf8(JSON.stringify({ ...inventedJob(), version: 99 })), "newerVersion"],
    ["a job with one wrong key", utf8(JSON.stringify({ ...inventedJob(), usualDay_kmh: 3 })), "unknownKey"],
  ])("that is %s is refused by name", async (_, bytes, code) => {
    expect(await codesOf(fileOf(bytes))).toEqual([code]);
  });

  it("that is too large is refused unread, with its size and what is allowed", async () => {
    const file = { ...fileOf(new Uint8Array(), 65e6), arrayBuffer: () => Promise.reject(new Error("was read")) };
    await expect(readJobFile(file)).rejects.toThrow("found a file of 65.0 MB, at most 64 MB allowed for a job");
  });

  it("of 30 MB is read where it is a job", async () => {
    const long = Array.from({ length: 45 }, (_, i) => ({
      ...withRecordedRoad(inventedJob(), 50_000).roads[1]!,
      id: `r${i}`,
    }));
    const job = { ...inventedJob(), roads: long };
    const bytes = utf8(jobText(job));
    expect(bytes.length).toBeGreaterThan(30e6);
    expect((await readJobFile(fileOf(bytes))).roads).toHaveLength(45);
  });

  it("of 30 MB that is no job is refused with one sentence", async () => {
    expect(await codesOf(fileOf(utf8(`"${"x".repeat(30e6)}"`)))).toEqual(["notAJob"]);
  });

  it("that is a folder is refused", async () => {
    const folder = { name: "folder", size: 4096, arrayBuffer: () => Promise.reject(new Error("NotReadable")) };
    expect(await codesOf(folder)).toEqual(["unreadable"]);
  });
});
