import { LINE_END } from "../../../shared/lineEnd.ts";
import { type Encoding, textStart } from "./decodeText.ts";
import type { LogFormat } from "./logFile.ts";

/** What of a file is sound, and whether its end is missing. */
interface FileEnd {
  readonly isCut: boolean;
  /** The file without the part of a row at its end, of which no value can be trusted. */
  readonly sound: Uint8Array;
}

const TAIL_BYTES = 8192;
/** Rows that must be alike before a last one that differs is a cut one: numbers are often written as short as they go. */
const ROWS_ALIKE = 20;

/**
 * Whether a table or an NMEA log ends in the middle of a line: no line end, and the last row has fewer cells, or fewer digits after
 * its last decimal sign, than the twenty rows before it have alike; or the last sentence lacks its checksum and the one before has one.
 */
export function cutAtEnd(bytes: Uint8Array, encoding: Encoding, format: LogFormat): FileEnd {
  const whole = { isCut: false, sound: bytes };
  const from = Math.max(0, bytes.length - TAIL_BYTES) & ~1;
  const tail = textStart(bytes.subarray(from), encoding, TAIL_BYTES + 1);
  const lines = tail.split(LINE_END);
  const [last] = lines.slice(-1);
  const before = lines.slice(-1 - ROWS_ALIKE, -1);
  const previous = before[before.length - 1] ?? "";
  if ((format !== "nmea" && format !== "table") || last.trim() === "") {
    return whole;
  }
  if (format === "nmea") {
    const isWhole = (line: string) => /\*[0-9A-Fa-f]{2}\s*$/.test(line);
    return { isCut: isWhole(previous) && !isWhole(last), sound: bytes };
  }
  // A single column of whole numbers cannot show that it was cut.
  const isAlike = before.every((row) => cellCount(row) === cellCount(previous) && decimals(row) === decimals(previous));
  const isShort = cellCount(last) < cellCount(previous) || decimals(last) < decimals(previous);
  return before.length === ROWS_ALIKE && isAlike && isShort
    ? { isCut: true, sound: bytes.subarray(0, startOfLastLine(bytes, encoding)) }
    : whole;
}

function cellCount(line: string): number {
  const delimiter = [";", "\t", "|", ","].find((sign) => line.includes(sign));
  return delimiter === undefined ? line.trim().split(/\s+/).length : line.split(delimiter).length;
}

function decimals(line: string): number {
  return /[.,](\d+)"?\s*$/.exec(line)?.[1].length ?? 0;
}

function startOfLastLine(bytes: Uint8Array, encoding: Encoding): number {
  const isLineEnd = (code: number) => code === 10 || code === 13;
  const width = encoding === "utf-16le" || encoding === "utf-16be" ? 2 : 1;
  for (let i = bytes.length - (bytes.length % width); i >= width; i -= width) {
    const code =
      width === 1
        ? bytes[i - 1]
        : encoding === "utf-16le"
          ? bytes[i - 2] + 256 * bytes[i - 1]
          : 256 * bytes[i - 2] + bytes[i - 1];
    if (isLineEnd(code)) {
      return i;
    }
  }
  return bytes.length;
}
