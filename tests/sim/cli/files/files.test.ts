import { existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readBytes, readText, writeText } from "../../../../sim/cli/files/files.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";

it("reads the text of a file, without its byte order mark", () => {
  const path = join(emptyFolder(), "a.csv");
  writeFileSync(path, "\uFEFF20 °C");
  expect(readText(path)).toBe("20 °C");
});

it("reads bytes as they are", () => {
  const path = join(emptyFolder(), "a.bin");
  writeFileSync(path, Buffer.of(0, 255, 10));
  expect([...readBytes(path)]).toEqual([0, 255, 10]);
});

it("says which name is near where a file is missing", () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, "monday.csv"), "");
  expect(() => readText(join(folder, "munday.csv"))).toThrow("found no file of this name; did you mean monday.csv");
  expect(() => readText(join(folder, "no", "such.csv"))).toThrow("found no file of this name");
});

it("says that a folder is a folder", () => {
  expect(() => readText(emptyFolder())).toThrow("found a folder, a file is wanted");
});

it("takes no photograph for a text", () => {
  const folder = emptyFolder();
  const path = join(folder, "car.jpg");
  writeFileSync(path, Buffer.of(0xff, 0xd8, 0xff, 0xe0, 0x41));
  expect(() => readText(path)).toThrow("as in a photograph");
  writeFileSync(path, "PNG\0");
  expect(() => readText(path)).toThrow("as in a photograph");
});

it("writes a text, and writes over a file only where that was allowed", () => {
  const path = join(emptyFolder(), "a.csv");
  writeText(path, "one", "keep");
  expect(() => writeText(path, "two", "keep")).toThrow("it is left as it is; choose another name");
  expect(() => writeText(path, "two", "ask")).toThrow("found a file of this name already; --force replaces it");
  expect(readFileSync(path, "utf8")).toBe("one");
  writeText(path, "3", "replace");
  expect(readFileSync(path, "utf8")).toBe("3");
});

it.each(["keep", "ask", "replace"] as const)("writes through no link, where it may %s what is there", (ifThere) => {
  const folder = emptyFolder();
  const [elsewhere, link, dangling] = ["elsewhere.txt", "a.csv", "b.csv"].map((name) => join(folder, name));
  writeFileSync(elsewhere, "precious");
  symlinkSync(elsewhere, link);
  symlinkSync(join(folder, "nothing.txt"), dangling);
  for (const path of [link, dangling])
    expect(() => writeText(path, "x", ifThere)).toThrow("found a link, no link is written through");
  expect(readFileSync(elsewhere, "utf8")).toBe("precious");
  expect(existsSync(join(folder, "nothing.txt"))).toBe(false);
});

it("says where nothing can be written", () => {
  const folder = emptyFolder();
  mkdirSync(join(folder, "inner"));
  expect(() => writeText(join(folder, "inner"), "x", "replace")).toThrow("found a folder, a file is wanted");
  expect(() => writeText(join(folder, "none", "a.csv"), "x", "ask")).toThrow("found no folder");
});
