import type { Encoding } from "../log/decodeText.ts";
import { fixBounds } from "../log/fixBounds.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { emptyFix } from "../log/fixes.ts";
import type { FormatReading } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import { readXml, type XmlReading } from "../log/readXml.ts";
import type { Steps } from "../log/steps.ts";
import { finishXml, numberIn, XmlTimes } from "../log/xmlFixes.ts";

const words = {
  format: "KML",
  point: "point",
  columns: { lat: "latitude", lon: "longitude", time: "when", height: "altitude", speed: "speed" },
};

/**
 * Fixes of a KML file: tracks with a time for each point and placemarks with a time; where there is none of either, the lines drawn
 * on the map, which are a planned route. Positions are longitude, latitude and altitude in that order (KML 2.2 and its tracks, from
 * memory).
 */
export function* readKml(name: string, bytes: Uint8Array, encoding: Encoding): Steps<FormatReading> {
  const reading = new KmlReading(name);
  yield* readXml(name, bytes, encoding, reading);
  const builder = reading.timed.count > 0 ? reading.timed : reading.drawn;
  return finishXml(builder, reading.problems, reading.times, encoding, words);
}

interface Place {
  readonly text: string;
  readonly line: number;
}

class KmlReading implements XmlReading {
  readonly problems: ProblemList;
  readonly times: XmlTimes;
  readonly timed = new FixBuilder();
  readonly drawn = new FixBuilder();
  private line = 0;
  private value = "";
  private isInTrack = false;
  private isInLine = false;
  private whens: string[] = [];
  private places: Place[] = [];
  private segment = 0;

  constructor(name: string) {
    this.problems = new ProblemList(name);
    this.times = new XmlTimes(this.problems);
  }

  open(element: string, _attributes: unknown, line: number): void {
    this.line = line;
    this.value = "";
    if (element === "track") this.isInTrack = true;
    if (element === "linestring") this.isInLine = true;
    if (element === "track" || element === "linestring") this.segment++;
    if (element === "track" || element === "placemark") this.forget();
  }

  text(text: string): void {
    this.value += text;
  }

  close(element: string): void {
    const text = this.value.trim();
    this.value = "";
    if (element === "when") this.whens.push(text);
    else if (element === "coord") this.places.push({ text, line: this.line });
    else if (element === "coordinates") this.takeCoordinates(text);
    else if (element === "track") {
      this.isInTrack = false;
      this.keep();
    } else if (element === "linestring") this.isInLine = false;
    else if (element === "placemark") this.keep();
  }

  end(depth: number, line: number): void {
    if (depth === 0) return;
    if (this.isInTrack) this.keep();
    this.problems.note("cutFile", line, "found the end of the file before the end of the log, read as far as it goes");
  }

  /** Positions between blanks: those of a line are drawn, the single one of a placemark may have a time. */
  private takeCoordinates(text: string): void {
    const places = text.split(/\s+/).filter((each) => each !== "");
    for (const place of places) {
      if (this.isInLine) this.addTo(this.drawn, { text: place.replaceAll(",", " "), line: this.line }, undefined);
      else if (places.length === 1) this.places.push({ text: place.replaceAll(",", " "), line: this.line });
    }
  }

  /** The times and positions gathered so far, the first with the first; a position without a time is left out. */
  private keep(): void {
    const { whens, places } = this;
    for (const [i, place] of places.entries()) {
      if (whens[i] !== undefined) this.addTo(this.timed, place, whens[i]);
    }
    const over = places.length - whens.length;
    if (whens.length > 0 && over > 0) {
      this.problems.bad("badTime", this.line, `found ${over} of ${places.length} positions without a time, left out`);
    }
    this.forget();
  }

  private forget(): void {
    this.whens = [];
    this.places = [];
  }

  private addTo(builder: FixBuilder, { text, line }: Place, when: string | undefined): void {
    const [lon, lat, altitude] = text.split(/\s+/);
    const fix = emptyFix(line, this.segment);
    fix.latitude_deg = numberIn(lat, fixBounds.latitude_deg);
    fix.longitude_deg = numberIn(lon, fixBounds.longitude_deg);
    fix.elevation_m = numberIn(altitude, fixBounds.elevation_m);
    if (Number.isNaN(fix.latitude_deg) || Number.isNaN(fix.longitude_deg)) {
      const found = `found position "${text.slice(0, 40)}", wanted longitude and latitude in degrees`;
      this.problems.bad("badPosition", line, found);
      return;
    }
    if (when !== undefined) this.times.take(fix, when);
    builder.add(fix);
  }
}
