import ts from "typescript";
import { describe, expect, it } from "vitest";
import { sourceFiles, textOf } from "../support/sourceFiles.ts";

/** Within a sentence: "held against the log", "hold what comes later against it". */
const HELD_AGAINST = /\b(hold|holds|held|holding) ([\w'’-]+ ){0,5}against\b/i;

// Each word stands here with the one that is used in its place.
const PAGE_WORDS: readonly (readonly [old: RegExp, now: string])[] = [
  [/\btake(n|s)? back\b/i, "undo"],
  [/\bdo(ne)? again\b/i, "redo"],
  [/^\s*Read in\b/, "Units"],
  [/\banswer so far\b/i, "Answer"],
  [/\bmay go anything\b/i, "range … to …"],
  [/\bwhen (it is |they are )?old\b/i, "at ten years"],
  [/\bnobody's car\b/i, "invented example"],
  [/\bneeds a look\b|\d to look at|\bto mend\b/i, "to check, wrong"],
  [/\bbeing worked out\b/i, "calculating"],
  [/\bten questions\b/i, "Quick start"],
  [/\bcar of your own\b|\bwith your own car\b/i, "New job"],
  [/\bcounted as a doubt\b/i, "marked unknown"],
  [/\bput away\b|\btake out\b|\bput (it|the log) back\b/i, "archive, remove, restore, discard"],
  [/\bsave along\b|\buntie the\b/i, "keep saving, stop saving"],
  [/\bearlier states?\b/i, "earlier version"],
  [/\bstart from the invented\b/i, "Example"],
  [/\bfigures of a single pack\b/i, "Show pack"],
  [/\bof this kind, for\b/i, "Body type, Tyre type"],
  [/^\s*(taken out|put in)\b/i, "parts removed, parts added"],
  [/\bwhat else draws\b/i, "Lights, heater, 12 V"],
  [/\bshare of the drive it\b|\bon for, of the drive\b/i, "on for (% of the drive)"],
  [/\bstanding draw\b/i, "always-on load"],
  [/\bgearbox input stands\b/i, "gearbox input limit"],
  [/\bfor ever\b(?! so)/i, "continuous"],
  [/\bas long as (\w+ ){0,3}ask(s|ed)\b/i, "continuous"],
  [/\bcharged up to\b|\bdriven down to\b/i, "charge to, discharge to"],
  [/\bfrom no torque\b/i, "torque ramp"],
  [/\bwinter's day takes\b/i, "energy in winter"],
  [/\bleft of the pack\b/i, "capacity at ten years"],
  [/\bdatasheet's handful\b|\blaw of four terms\b/i, "datasheet figures, losses by formula"],
  [/\ba stand ends\b/i, "a stop ends"],
  [/\bmake a road of it\b/i, "Use this road"],
  [/\bbelow the plate\b/i, "spare to plated weight"],
  [/\bturns of the motor\b/i, "motor speed (rpm)"],
  [/\basked for with winter\b/i, "range needed when new"],
  [/\bin the mean\b/i, "average"],
  [/\btrace was not followed\b/i, "falls behind"],
  [/\battained\b/i, "driven"],
  [/\bat its floor\b|\bto its floor\b|\bto floor\b|\bthe ceiling\b/i, "empty, full"],
  [/\bthe limit is pack\b|\bnot held: heat\b/i, "what the car meets, in words"],
  [/\bleft to pay\b/i, "net of regenerative braking"],
  [HELD_AGAINST, "check against, compare with, cross-check"],
  [/\bin words, or to save\b/i, "Data and download"],
  [/\bpoint at the figure\b/i, "(nothing)"],
  [/\bwhy are these numbers\b/i, "How this was calculated"],
  [/\breckon/i, "calculate, use"],
  [/\bnot for the client\b/i, "Hide from client"],
  [/^\s*(upwards|words below it)\s*$/i, "vertical axis, caption"],
  [/\bcounts until then\b/i, "Using …"],
  [/\bis not written with\b|\bwanted is\b/i, "use …"],
  [/\busable fix\b/i, "recorded position"],
];

const CODE_WORDS: readonly (readonly [old: RegExp, now: string])[] = [
  [/\bcomes? back with\b/i, "returns"],
  [HELD_AGAINST, "compared with"],
  [/\bas long as (\w+ ){0,3}asked\b/i, "continuous"],
  [/\b(is|are|was|were) told\b(?! (apart|from|to be))/i, "given, written, reported"],
  [/\blast ?words\b/i, "unsaved journal"],
  [/\blift(ed)? ?(lists?|jobs?)\b|\blower ?lists\b/i, "externalised, inline"],
  [/\btied? ?(file|state)\b|\buntie/i, "linked file"],
  [/\bliveliness\b/i, "acceleration noise"],
  // Good English elsewhere, these are held as names only: no comment begins with a letter.
  [/^(desk|bench)([A-Z]\w*)?$/, "jobEditor, draft or staging"],
  [/^Work$/, "RunContext, or what it works on"],
  [/^([sS]aid|told|tell|tell[A-Z]\w*|[sS]ay|say[A-Z]\w*)$/, "message, report, format, onProgress"],
  [/^stand$/, "standstill, stop"],
  [/^\w*[sS]tretch\w*$/, "leg, span, part"],
  [/^\w*[wW]ander\w*$/, "correlated noise"],
  [/^winding\w*$/, "circuity"],
  [/^arriving_kg$/, "kerb_kg"],
  [/^(lat|lon)_\w+$/, "latitude_deg, longitude_deg"],
  [/^\w*[hH]eight_m$/, "elevation_m"],
];

/** From one line of a comment to the next. */
const LINE_OF_COMMENT = /\s*\n\s*(\*(?!\/)|\/\/)?\s*/g;

interface Words {
  readonly text: string;
  readonly line: number;
}

/** What a file writes in quotes: strings and the fixed pieces of templates, paths of imports aside. */
function writtenTexts(file: string, text: string): readonly Words[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Words[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      found.push({ text: node.text, line: line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Comments and identifiers of a file, names in strings aside. */
function commentsAndNames(file: string, text: string): readonly Words[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Words[] = [];
  const seen = new Set<number>();
  const add = (start: number, words: string): void => {
    if (seen.has(start)) return;
    seen.add(start);
    found.push({ text: words, line: source.getLineAndCharacterOfPosition(start).line + 1 });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) add(node.getStart(source), node.text);
    for (const { pos, end } of ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [])
      add(pos, text.slice(pos, end).replaceAll(LINE_OF_COMMENT, " "));
    for (const { pos, end } of ts.getTrailingCommentRanges(text, node.getEnd()) ?? []) add(pos, text.slice(pos, end));
    for (const child of node.getChildren(source)) visit(child);
  };
  visit(source);
  return found;
}

/** Where old words stand, with what to write there. */
function strays(
  words: readonly (readonly [RegExp, string])[],
  read: (file: string, text: string) => readonly Words[],
  files: readonly string[],
): readonly string[] {
  return files.flatMap((file) => {
    const text = textOf(file);
    const flat = text.replaceAll(LINE_OF_COMMENT, " ");
    // A whole file is far quicker to search than to parse: only what may be in it is looked for with care.
    const possible = words.filter(([old]) => withoutAnchors(old).test(flat));
    if (possible.length === 0) return [];
    return read(file, text).flatMap(({ text: written, line }) =>
      possible.flatMap(([old, now]) => {
        const found = old.exec(written);
        return found ? [`${file} line ${line}: "${found[0]}", write ${now}`] : [];
      }),
    );
  });
}

function withoutAnchors(pattern: RegExp): RegExp {
  return new RegExp(pattern.source.replaceAll(/\^|\$/g, ""), pattern.flags);
}

describe("the reading of a file", () => {
  const file = [
    'import { standingDraw } from "./for ever.ts";',
    "/** Comes",
    " * back with nothing. */",
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the text of a program
    "const kerb_kg = `${standingDraw} stands for ever`; // at its end",
    'const other = "Standing draw";',
  ].join("\n");
  it("finds what is written, and no path of an import", () => {
    const texts = writtenTexts("a.ts", file).map(({ text }) => text);
    expect(texts).toEqual(["", " stands for ever", "Standing draw"]);
  });
  it("finds comments, joined over their lines, and names", () => {
    const texts = commentsAndNames("a.ts", file).map(({ text, line }) => `${line} ${text}`);
    expect(texts).toContain("2 /** Comes back with nothing. */");
    expect(texts).toContain("4 // at its end");
    expect(texts).toContain("4 kerb_kg");
    expect(texts.some((text) => text.includes("stands for ever"))).toBe(false);
  });
});

it("what the page and the terminal write is in the words of today", () => {
  expect(strays(PAGE_WORDS, writtenTexts, sourceFiles("shared", "sim", "web"))).toEqual([]);
});

it("comments and names of the code are in the words of today", () => {
  expect(strays(CODE_WORDS, commentsAndNames, sourceFiles("shared", "sim", "web"))).toEqual([]);
});
