import sax from "sax";
import { inputError } from "../../../shared/problems.ts";
import { type Encoding, textPieces } from "./decodeText.ts";
import type { ProblemList } from "./problemList.ts";
import type { Steps } from "./steps.ts";

/** What gathers fixes from the elements of one kind of XML; names come without prefix, in lower case. */
export interface XmlReading {
  readonly problems: ProblemList;
  open(element: string, attributes: Readonly<Record<string, string>>, line: number): void;
  text(text: string): void;
  close(element: string): void;
  /** The end of the file, `depth` elements still being open. */
  end(depth: number, line: number): void;
}

/** Elements nest a handful deep in a log; beyond this the file is not one. */
const DEEPEST = 64;

/**
 * Hands the elements of an XML file to a reading. Broken or cut XML is read as far as it goes, every fault with its line. Entities
 * are refused, nothing is expanded or fetched.
 */
export function* readXml(name: string, bytes: Uint8Array, encoding: Encoding, reading: XmlReading): Steps<void> {
  const parser = sax.parser(true, { position: true });
  let depth = 0;
  parser.onerror = (error) => {
    reading.problems.note("brokenXml", parser.line + 1, `found broken XML, ${firstLine(error.message)}`);
    parser.error = null as unknown as Error; // the tokeniser's own way to go on after an error
  };
  parser.ondoctype = (doctype) => {
    if (/<!ENTITY/i.test(doctype)) {
      throw inputError("xmlEntities", name, "found XML that declares entities, which a log never needs; it is refused");
    }
    if (/\b(?:SYSTEM|PUBLIC)\s+["']/.test(doctype)) {
      const found = "found XML that draws on a definition outside the file, which a log never needs";
      throw inputError("xmlEntities", name, `${found}; it is refused, and nothing is fetched`);
    }
  };
  parser.onopentag = (tag) => {
    if (++depth > DEEPEST) {
      throw inputError("notALog", name, `found elements nested more than ${DEEPEST} deep, as no log has them`);
    }
    reading.open(localName(tag.name), tag.attributes as Readonly<Record<string, string>>, parser.line + 1);
  };
  parser.onclosetag = (tagName) => {
    depth = Math.max(0, depth - 1);
    reading.close(localName(tagName));
  };
  parser.ontext = (text) => reading.text(text);
  parser.oncdata = (text) => reading.text(text);

  let seenRoot = false;
  for (const { text, done_frac } of textPieces(bytes, encoding)) {
    if (!seenRoot && /<!ENTITY/i.test(text)) {
      throw inputError("xmlEntities", name, "found XML that declares entities, which a log never needs; it is refused");
    }
    parser.write(text);
    seenRoot ||= depth > 0;
    yield done_frac;
  }
  reading.end(depth, parser.line + 1);
}

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1).toLowerCase();
}

function firstLine(text: string): string {
  return text.split("\n", 1)[0].toLowerCase().slice(0, 80);
}
