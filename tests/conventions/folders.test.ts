import { readdirSync } from "node:fs";
import { basename } from "node:path";
import { expect, it } from "vitest";
import { root, sourceFiles, textOf } from "../support/sourceFiles.ts";

it("has five folders at the top, and .ci", () => {
  const ignored = textOf(".gitignore")
    .split("\n")
    .map((line) => line.replace(/\/$/, ""));
  const folders = readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== ".git" && !ignored.includes(entry.name))
    .map(({ name }) => name);
  expect(folders.sort()).toEqual([".ci", "cycles", "shared", "sim", "tests", "web"]);
});

it("names each file of code in camelCase after one idea", () => {
  const unnamed = /^(utils?|helpers?|common|misc|types|constantsAndTypes)\b/i;
  const strays = sourceFiles("shared", "sim", "web", "tests").filter((file) => {
    const name = basename(file).replace(/\.(test|bench|test-d|d)\.ts$|\.ts$/, "");
    return unnamed.test(name) || !/^[a-z][A-Za-z0-9]*$/.test(name);
  });
  expect(strays).toEqual([]);
});

it("keeps tests that run: none skipped, none alone", () => {
  const strays = sourceFiles("tests")
    .filter((file) => file.endsWith(".test.ts") && file !== "tests/conventions/folders.test.ts")
    .filter((file) => /\b(it|test|describe)\.(skip|only|todo|skipIf|runIf|fails)\b/.test(textOf(file)));
  expect(strays).toEqual([]);
});
