import type { Encoding } from "../log/decodeText.ts";
import type { FormatReading } from "../log/logFile.ts";
import { readXml } from "../log/readXml.ts";
import type { Steps } from "../log/steps.ts";
import { GpxReading } from "./gpxReading.ts";

/**
 * Fixes of a GPX 1.0 or 1.1 file [GPX11, element trkType]: tracks and segments, or the points of a route. Speed is read where 1.0
 * has it and from any extension, in m/s.
 */
export function* readGpx(name: string, bytes: Uint8Array, encoding: Encoding): Steps<FormatReading> {
  const reading = new GpxReading(name);
  yield* readXml(name, bytes, encoding, reading);
  return reading.finish(encoding);
}
