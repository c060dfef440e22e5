import type { Steps } from "./steps.ts";

// The decoder of the Encoding Standard: in every browser and in Node. Declared here so that sim/ needs neither's types.
declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal?: boolean },
) => { decode(bytes?: Uint8Array, options?: { readonly stream?: boolean }): string };

export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** Bytes decoded at once: small enough to keep the strings short-lived, as the XML tokeniser likes it. */
const PIECE_BYTES = 65536;
/** How much of the file decides the encoding. */
const SAMPLE_BYTES = 65536;

/**
 * The text encoding of a file: by its mark where there is one; UTF-16 where every other byte is mostly zero; UTF-8
 * where the bytes are valid as such; else Windows-1252, which reads Latin-1 as well [WHATWGEncoding, section 4.2].
 */
export function encodingOf(bytes: Uint8Array): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) {
    return "utf-16le";
  }
  if (bytes[0] === 0xfe && bytes[1] === 0xff) {
    return "utf-16be";
  }
  const sample = bytes.subarray(0, SAMPLE_BYTES);
  let evenZeros = 0;
  let oddZeros = 0;
  for (let i = 0; i + 1 < sample.length; i += 2) {
    evenZeros += sample[i] === 0 ? 1 : 0;
    oddZeros += sample[i + 1] === 0 ? 1 : 0;
  }
  const pairs = Math.floor(sample.length / 2);
  if (pairs > 0 && oddZeros > 0.7 * pairs && evenZeros < 0.1 * pairs) {
    return "utf-16le";
  }
  if (pairs > 0 && evenZeros > 0.7 * pairs && oddZeros < 0.1 * pairs) {
    return "utf-16be";
  }
  return isUtf8(bytes) ? "utf-8" : "windows-1252";
}

/** The whole text in pieces, each with the share of the file before its end. Marks at the start are dropped. */
export function* textPieces(
  bytes: Uint8Array,
  encoding: Encoding,
): Generator<{ readonly text: string; readonly done_frac: number }> {
  const decoder = new TextDecoder(encoding);
  for (let from = 0; from < bytes.length; from += PIECE_BYTES) {
    const to = Math.min(from + PIECE_BYTES, bytes.length);
    const text = decoder.decode(bytes.subarray(from, to), { stream: to < bytes.length });
    yield { text, done_frac: to / bytes.length };
  }
}

/** The first part of the text, for finding out what it is. */
export function textStart(bytes: Uint8Array, encoding: Encoding, byteCount: number): string {
  return new TextDecoder(encoding).decode(bytes.subarray(0, byteCount), { stream: true });
}

/**
 * Calls `take` with every line and its number from 1. Any of \n, \r\n and a lone \r ends a line. A line longer than
 * `longest` characters is cut there, so that a file without line breaks cannot pile up in memory.
 */
export function* eachLine(
  bytes: Uint8Array,
  encoding: Encoding,
  take: (line: string, lineNumber: number) => void,
  longest = 65536,
): Steps<void> {
  let rest = "";
  let lineNumber = 0;
  for (const { text, done_frac } of textPieces(bytes, encoding)) {
    const all = rest + text;
    // A \r at the very end may be the first half of \r\n: wait for the next piece.
    const end = all.endsWith("\r") && done_frac < 1 ? all.length - 1 : all.length;
    let from = 0;
    const breaks = /\r\n|\n|\r/g;
    for (let found = breaks.exec(all); found !== null && found.index < end; found = breaks.exec(all)) {
      take(all.slice(from, found.index), ++lineNumber);
      from = found.index + found[0].length;
    }
    rest = all.slice(from);
    while (rest.length > longest) {
      take(rest.slice(0, longest), ++lineNumber);
      rest = rest.slice(longest);
    }
    yield done_frac;
  }
  if (rest !== "") {
    take(rest, ++lineNumber);
  }
}

function isUtf8(bytes: Uint8Array): boolean {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  try {
    for (let from = 0; from < bytes.length; from += 1 << 20) {
      decoder.decode(bytes.subarray(from, from + (1 << 20)), { stream: true });
    }
    return true; // a sequence cut by the end of the file is a cut file, not another encoding
  } catch {
    return false;
  }
}
