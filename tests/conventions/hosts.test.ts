import { readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { filesUnder, root, textOf } from "../support/sourceFiles.ts";

const folders = ["shared", "sim", "web", "tests", "cycles", ".ci"];
const texts = /\.(ts|mjs|js|html|css|csv|md|json|gpx|txt|svg)$|\/run$|pre-commit$/;

/** Names that stand for a namespace of an open standard, for this machine, or for nobody (RFC 2606). */
const harmless = /^(www\.w3\.org|www\.topografix\.com|127\.0\.0\.1|localhost|\[::1\]|([a-z-]+\.)?example)$/;

/** Each `http(s)://name` in a text whose name is written out. */
function hostsIn(text: string): readonly string[] {
  return [...text.matchAll(/\bhttps?:\/\/([a-z0-9.-]+|\[[0-9a-f:]+\])/gi)].map(([, host = ""]) => host.toLowerCase());
}

it("tells hosts from text", () => {
  const sample = ["http", "://www.w3.org/2000/svg and https", "://somewhere.org:80/x"].join("");
  expect(hostsIn(sample)).toEqual(["www.w3.org", "somewhere.org"]);
});

it("names no host anywhere but in the list of references", () => {
  const rootFiles = readdirSync(root).filter((name) => texts.test(name) && name !== "package-lock.json");
  const files = [...rootFiles, ...folders.flatMap((folder) => filesUnder(folder, texts))];
  expect(files.length).toBeGreaterThan(50);
  const strays = files
    .filter((file) => file !== "sim/REFERENCES.md")
    .flatMap((file) => hostsIn(textOf(file)).map((host) => ({ file, host })))
    .filter(({ host }) => !harmless.test(host));
  expect(strays.map(({ file, host }) => `${file}: ${host}`)).toEqual([]);
});
