import { inputError } from "../../../shared/problems.ts";
import { type Encoding, eachLine } from "../log/decodeText.ts";
import type { FormatReading, ReadLogOptions } from "../log/logFile.ts";
import type { Steps } from "../log/steps.ts";
import { tableLayout } from "./tableLayout.ts";
import { TableReading } from "./tableReading.ts";

/** Lines looked at before anything is read. */
const SAMPLE_LINES = 400;
/** Lines handed to the table parser at once. */
const BATCH_LINES = 500;

/**
 * Fixes of a table of values: delimiter, decimal sign, header, units row and preamble are found, columns guessed from
 * their names and values. Values are read as the file writes them; what it leaves open comes back as questions.
 */
export function* readTable(
  name: string,
  bytes: Uint8Array,
  encoding: Encoding,
  options: ReadLogOptions,
): Steps<FormatReading> {
  const sample: string[] = [];
  for (const _ of eachLine(bytes, encoding, (line) => sample.length < SAMPLE_LINES && sample.push(line), 4096)) {
    if (sample.length >= SAMPLE_LINES) {
      break;
    }
  }
  const layout = tableLayout(sample);
  if (!layout) {
    throw inputError(
      "notALog",
      name,
      "found text without a table of numbers in it; a log is read as GPX, TCX, KML, NMEA 0183, CSV or TSV",
    );
  }
  const reading = new TableReading(name, layout, options);
  let batch: string[] = [];
  let firstOfBatch = layout.firstDataLine + 1;
  const flush = () => {
    reading.lines(batch, firstOfBatch);
    firstOfBatch += batch.length;
    batch = [];
  };
  const take = (line: string, lineNumber: number) => {
    if (lineNumber > layout.firstDataLine) {
      batch.push(line.includes("\n") ? "" : line);
      if (batch.length >= BATCH_LINES) {
        flush();
      }
    }
  };
  yield* eachLine(bytes, encoding, take, 4096);
  flush();
  return reading.finish(encoding);
}
