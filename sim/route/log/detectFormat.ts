import { LINE_END } from "../../../shared/lineEnd.ts";
import { inputError } from "../../../shared/problems.ts";
import type { LogFormat } from "./logFile.ts";

/** First bytes of files that are no logs, so that a person dropping one learns what it is. */
const signatures: readonly (readonly [string, string])[] = [
  ["\x89PNG", "a picture (PNG)"],
  ["\xff\xd8\xff", "a photograph (JPEG)"],
  ["GIF8", "a picture (GIF)"],
  ["BM\x36", "a picture (bitmap)"],
  ["%PDF", "a PDF document"],
  ["\x1f\x8b", "a gzip archive; unpack it and bring the file inside"],
  ["7z\xbc\xaf", "an archive; unpack it and bring the file inside"],
  ["Rar!", "an archive; unpack it and bring the file inside"],
  ["\xd0\xcf\x11\xe0", "a spreadsheet or document of the older kind; open it and save the sheet as CSV"],
  ["RIFF", "a sound, picture or film"],
  ["OggS", "a sound or film"],
  ["ID3", "a sound"],
  ["SQLite format", "a database"],
];

const READS = "a log is read as GPX, TCX, KML, NMEA 0183, CSV or TSV";

/**
 * What a file is, from its content alone; its name is not looked at. Refuses what is no text, with what to do instead, what is XML of another
 * kind, and XML that declares entities (nothing is ever expanded or fetched).
 */
export function detectFormat(name: string, bytes: Uint8Array, start: string): LogFormat {
  if (bytes.length === 0) {
    throw inputError("emptyFile", name, `found an empty file; ${READS}`);
  }
  const head = String.fromCharCode(...bytes.subarray(0, 16));
  for (const [mark, words] of signatures) {
    if (head.startsWith(mark)) {
      throw inputError("notALog", name, `found ${words}; ${READS}`);
    }
  }
  if (head.startsWith("PK\x03\x04")) {
    throw inputError("notALog", name, `found ${zipWords(bytes)}; ${READS}`);
  }
  if (head.slice(8, 12) === ".FIT") {
    const advice = "export the activity as GPX or TCX where it was recorded, and bring that";
    throw inputError("notALog", name, `found a FIT file, as head units and watches record it; ${advice}`);
  }
  if (head.slice(4, 8) === "ftyp") {
    throw inputError("notALog", name, `found a photograph or film; ${READS}`);
  }
  const text = start.replace(/^\uFEFF/, "");
  if (text.trim() === "") {
    throw inputError("emptyFile", name, `found nothing but blank space; ${READS}`);
  }
  if (looksBinary(text)) {
    throw inputError("notALog", name, `found bytes that are no text; ${READS}`);
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
  const xmlRoot = /<(?:[\w.-]+:)?(trainingcenterdatabase|kml)[\s>/]/i.exec(text)?.[1]?.toLowerCase();
  if (xmlRoot !== undefined && text.trimStart().startsWith("<")) {
    return xmlRoot === "kml" ? "kml" : "tcx";
  }
  if (/^\s*[[{]/.test(text)) {
    const isGeo = /"(?:Feature(?:Collection)?|LineString|MultiLineString|GeometryCollection)"/.test(text);
    const found = isGeo ? "GeoJSON, which has no agreed place for times" : "JSON, whose keys no log agrees on";
    throw inputError("notALog", name, `found ${found}; export the log as GPX, or as a table (CSV), and bring that`);
  }
  const markup = /^\s*<(?:\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*|<![^>]*>\s*)*<?([\w:.-]*)/.exec(text);
  if (markup) {
    const root = markup[1] ? ` with the root element "${markup[1].slice(0, 40)}"` : "";
    throw inputError("notALog", name, `found markup${root}; ${READS}`);
  }
  return "table";
}

/** What a zip archive holds, as far as the names at its start say: office documents and map files are such archives too. */
function zipWords(bytes: Uint8Array): string {
  const names = String.fromCharCode(...bytes.subarray(0, 4096));
  if (names.includes("xl/") || names.includes("opendocument.spreadsheet")) {
    return "a spreadsheet; open it and save the sheet as CSV";
  }
  if (/\.kml/i.test(names)) {
    return "a packed map file (KMZ); unpack it as a zip archive and bring the KML inside";
  }
  const isOffice = names.includes("word/") || names.includes("opendocument") || names.includes("[Content_Types].xml");
  return isOffice ? "an office document; save its table as CSV" : "a zip archive; unpack it and bring the file inside";
}

/** A stray element in a table does not make it GPX: it begins with markup, or points stand all over it. */
function isGpx(text: string): boolean {
  const elements = text.match(/<(?:[\w.-]+:)?(?:gpx|trkpt|trkseg|rtept)[\s>/]/gi)?.length ?? 0;
  return elements > 0 && (text.trimStart().startsWith("<") || elements > 5);
}

/** Sentences in a fifth of the lines at least, or several in a text without lines. */
function isNmea(text: string): boolean {
  const sentences = text.match(/\$[A-Z]{2}(?:RMC|GGA|GNS|VTG|ZDA|GSA|GSV|GLL),/g)?.length ?? 0;
  const lines = text.split(LINE_END).length;
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
