import type { Encoding } from "../log/decodeText.ts";
import { fixBounds } from "../log/fixBounds.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { emptyFix, type Fix } from "../log/fixes.ts";
import type { FormatReading } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import { readXml, type XmlReading } from "../log/readXml.ts";
import type { Steps } from "../log/steps.ts";
import { finishXml, numberIn, XmlTimes } from "../log/xmlFixes.ts";

const words = {
  format: "TCX",
  point: "track point",
  columns: { lat: "LatitudeDegrees", lon: "LongitudeDegrees", time: "Time", height: "AltitudeMeters", speed: "Speed" },
};

/**
 * Fixes of a TCX file, as head units and watches write it: the points of all laps, the speed of an extension in m/s (elements as the
 * second version of the format names them, from memory). A second track within one lap is a pause; a new lap is none.
 */
export function* readTcx(name: string, bytes: Uint8Array, encoding: Encoding): Steps<FormatReading> {
  const reading = new TcxReading(name);
  yield* readXml(name, bytes, encoding, reading);
  return finishXml(reading.builder, reading.problems, reading.times, encoding, words);
}

class TcxReading implements XmlReading {
  readonly problems: ProblemList;
  readonly times: XmlTimes;
  readonly builder = new FixBuilder();
  private point: Fix | undefined;
  private value = "";
  private segment = 0;
  private tracksInLap = 0;

  constructor(name: string) {
    this.problems = new ProblemList(name);
    this.times = new XmlTimes(this.problems);
  }

  open(element: string, _attributes: unknown, line: number): void {
    if (element === "trackpoint") {
      this.keepPoint(); // a point that was never closed
      this.point = emptyFix(line, this.segment);
    } else if (element === "activity") {
      this.segment++;
    } else if (element === "lap") {
      this.tracksInLap = 0;
    } else if (element === "track" && this.tracksInLap++ > 0) {
      this.segment++;
    }
    this.value = "";
  }

  text(text: string): void {
    if (this.point && this.value.length < 100) {
      this.value += text;
    }
  }

  close(element: string): void {
    const { point } = this;
    const text = this.value.trim();
    this.value = "";
    if (!point) return;
    if (element === "trackpoint") this.keepPoint();
    else if (element === "time") this.times.take(point, text);
    else if (element === "latitudedegrees") point.latitude_deg = numberIn(text, fixBounds.latitude_deg);
    else if (element === "longitudedegrees") point.longitude_deg = numberIn(text, fixBounds.longitude_deg);
    else if (element === "altitudemeters") point.elevation_m = numberIn(text, fixBounds.elevation_m);
    else if (element === "speed") point.speed_mps = numberIn(text, fixBounds.speed_mps);
  }

  end(depth: number, line: number): void {
    this.point = undefined; // half a point is none
    if (depth > 0) {
      const message = "found the end of the file before the end of the log, read as far as it goes";
      this.problems.note("cutFile", line, message);
    }
  }

  /** A point indoors has no position; it counts where it has a speed. */
  private keepPoint(): void {
    const { point } = this;
    this.point = undefined;
    if (!point) return;
    const isPlaced = !Number.isNaN(point.latitude_deg) && !Number.isNaN(point.longitude_deg);
    if (isPlaced || !Number.isNaN(point.speed_mps)) this.builder.add(point);
    else this.problems.bad("badPosition", point.line, "found a point without a position and without a speed");
  }
}
