import { describe, expect, it } from "vitest";
import { eachLine, encodingOf } from "../../../../sim/route/log/decodeText.ts";
import { runSteps } from "../../../../sim/route/log/steps.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const linesOf = (bytes: Uint8Array, longest?: number) => {
  const lines: string[] = [];
  runSteps(eachLine(bytes, encodingOf(bytes), (line, number) => lines.push(`${number}:${line}`), longest));
  return lines;
};

describe("the encoding of a text", () => {
  it.each([
    ["utf-16le", Uint8Array.of(0xff, 0xfe, 65, 0)],
    ["utf-16be", Uint8Array.of(0xfe, 0xff, 0, 65)],
    ["utf-16le", Uint8Array.of(65, 0, 66, 0, 67, 0, 10, 0)],
    ["utf-16be", Uint8Array.of(0, 65, 0, 66, 0, 67, 0, 10)],
    ["windows-1252", Uint8Array.of(72, 0xf6, 104, 101)],
    ["utf-8", bytesOf("Höhe")],
    ["utf-8", bytesOf("Höhe").subarray(0, 2)],
  ])("%s is found", (encoding, bytes) => {
    expect(encodingOf(bytes)).toBe(encoding);
  });
});

describe("lines", () => {
  it("end at any kind of line end and are counted from 1", () => {
    expect(linesOf(bytesOf("a\r\nb\nc\rd"))).toEqual(["1:a", "2:b", "3:c", "4:d"]);
  });

  it("keep their ends together across the pieces of a large file", () => {
    const lines = Array.from({ length: 30_000 }, (_, i) => `line ${i}`);
    expect(linesOf(bytesOf(lines.join("\r\n")))).toEqual(lines.map((line, i) => `${i + 1}:${line}`));
  });

  it("that never end are cut", () => {
    expect(linesOf(bytesOf("x".repeat(25)), 10)).toEqual(["1:xxxxxxxxxx", "2:xxxxxxxxxx", "3:xxxxx"]);
  });
});
