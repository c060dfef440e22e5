import { inputError } from "../../../shared/problems.ts";
import type { LogFormat } from "./logFile.ts";

/** First bytes of files that are no logs, so that a person dropping one is told what it is. */
const signatures: readonly (readonly [string, string])[] = [
  ["\x89PNG", "a picture (PNG)"],
  ["\xff\xd8\xff", "a photograph (JPEG)"],
  ["GIF8", "a picture (GIF)"],
  ["BM\x36", "a picture (bitmap)"],
  ["%PDF", "a PDF document"],
  ["PK\x03\x04", "a zip archive or an office document: unpack it, or save the sheet as CSV"],
  ["\x1f\x8b", "a gzip archive: unpack it first"],
  ["7z\xbc\xaf", "an archive: unpack it first"],
  ["Rar!", "an archive: unpack it first"],
  ["\xd0\xcf\x11\xe0", "an office document: save the sheet as CSV"],
  ["RIFF", "a sound, picture or film"],
  ["OggS", "a sound or film"],
  ["ID3", "a sound"],
  ["SQLite format", "a database"],
];

const READS = "wanted a GPX, NMEA 0183, CSV or TSV log";

/**
 * What a file is, from its content alone; its name is not looked at. Refuses what is no text, what is XML of another
 * kind, and XML that declares entities (nothing is ever expanded or fetched).
 */
export function detectFormat(name: string, bytes: Uint8Array, start: string): LogFormat {
  if (bytes.length === 0) {
    throw inputError("emptyFile", name, `found an empty file, ${READS}`);
  }
  const head = String.fromCharCode(...bytes.subarray(0, 16));
  for (const [mark, words] of signatures) {
    if (head.startsWith(mark)) {
      throw inputError("notALog", name, `found ${words}, ${READS}`);
    }
  }
  if (head.slice(4, 8) === "ftyp") {
    throw inputError("notALog", name, `found a photograph or film, ${READS}`);
  }
  const text = start.replace(/^\uFEFF/, "");
  if (text.trim() === "") {
    throw inputError("emptyFile", name, `found nothing but blank space, ${READS}`);
  }
  if (looksBinary(text)) {
    throw inputError("notALog", name, `found data that is no text, ${READS}`);
  }
  if (/<!ENTITY/i.test(text)) {
    throw inputError("xmlEntities", name, "found XML that declares entities, which a log never needs; it is refused");
  }
  if (isGpx(text)) {
    return "gpx";
  }
  if (isNmea(text)) {
    return "nmea";
  }
  const markup = /^\s*<(?:\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*|<![^>]*>\s*)*<?([\w:.-]*)/.exec(text);
  if (markup) {
    const root = markup[1] ? ` with the root element "${markup[1]}"` : "";
    throw inputError("notALog", name, `found markup${root}, ${READS}`);
  }
  return "table";
}

/** A stray element in a table does not make it GPX: it begins with markup, or points stand all over it. */
function isGpx(text: string): boolean {
  const elements = text.match(/<(?:[\w.-]+:)?(?:gpx|trkpt|trkseg|rtept)[\s>/]/gi)?.length ?? 0;
  return elements > 0 && (text.trimStart().startsWith("<") || elements > 5);
}

/** Sentences in a fifth of the lines at least, or several in a text without lines. */
function isNmea(text: string): boolean {
  const sentences = text.match(/\$[A-Z]{2}(?:RMC|GGA|GNS|VTG|ZDA|GSA|GSV|GLL),/g)?.length ?? 0;
  const lines = text.split(/\r\n|\n|\r/).length;
  return sentences > 0 && 5 * sentences >= lines;
}

/** Control characters other than tab and line ends do not occur in text; a tenth of a percent is forgiven. */
function looksBinary(text: string): boolean {
  let control = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if ((code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12 && code !== 26) || code === 0xfffd) {
      control++;
    }
  }
  return control > Math.max(8, 0.001 * text.length);
}
