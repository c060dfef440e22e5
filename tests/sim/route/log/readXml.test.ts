import { expect, it } from "vitest";
import { ProblemList } from "../../../../sim/route/log/problemList.ts";
import { readXml } from "../../../../sim/route/log/readXml.ts";
import { runSteps } from "../../../../sim/route/log/steps.ts";

/** What a reading is handed, one word each. */
function read(text: string) {
  const problems = new ProblemList("a.xml");
  const seen: string[] = [];
  const reading = {
    problems,
    open: (element: string, { lat }: Readonly<Record<string, string>>, line: number) =>
      void seen.push(`<${element}${lat === undefined ? "" : ` ${lat}`} ${line}`),
    text: (words: string) => void (words.trim() !== "" && seen.push(words.trim())),
    close: (element: string) => void seen.push(`>${element}`),
    end: (depth: number) => void seen.push(`end ${depth}`),
  };
  runSteps(readXml("a.xml", new TextEncoder().encode(text), "utf-8", reading));
  return { seen, problems: problems.finish() };
}

it("hands over elements without their prefix, with attributes, text and line", () => {
  const { seen } = read('<g:GPX xmlns:g="x">\n<g:trkpt lat="50"><ele>12</ele></g:trkpt>\n</g:GPX>');
  expect(seen).toEqual(["<gpx 1", "<trkpt 50 2", "<ele 2", "12", ">ele", ">trkpt", ">gpx", "end 0"]);
});

it("reads a cut file as far as it goes, and says how deep it was cut", () => {
  expect(read("<gpx><trk><ele>1").seen.at(-1)).toBe("end 3");
});

it("goes on after broken XML, with the line", () => {
  const { seen, problems } = read("<gpx>\n<a b=c></a><ele>7</ele></gpx>");
  expect(seen).toContain("7");
  expect(problems[0]).toMatchObject({ code: "brokenXml", where: "a.xml line 2" });
});

it("refuses entities, definitions elsewhere, and what nests as no log does", () => {
  expect(() => read('<!DOCTYPE a [<!ENTITY x "y">]><a>&x;</a>')).toThrow(/declares entities/);
  expect(() => read('<!DOCTYPE a SYSTEM "a.dtd"><a/>')).toThrow(/nothing is fetched/);
  expect(() => read("<a>".repeat(65))).toThrow(/nested more than 64 deep/);
});
