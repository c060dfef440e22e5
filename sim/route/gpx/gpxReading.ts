import { accuracyOfHdop_m } from "../log/accuracyOfHdop.ts";
import type { Encoding } from "../log/decodeText.ts";
import { fixBounds } from "../log/fixBounds.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { emptyFix, type Fix } from "../log/fixes.ts";
import type { FormatReading } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import type { XmlReading } from "../log/readXml.ts";
import { finishXml, numberIn, XmlTimes } from "../log/xmlFixes.ts";

const columns = { lat: "lat", lon: "lon", time: "time", height: "ele", speed: "speed" };

/** What the elements of a GPX file say, gathered point by point [GPX11, element trkType]; the tokeniser is the caller's. */
export class GpxReading implements XmlReading {
  readonly problems: ProblemList;
  private readonly times: XmlTimes;
  private readonly track = new FixBuilder();
  private readonly route = new FixBuilder();
  private point: Fix | undefined;
  private pointName = "";
  private field = "";
  private value = "";
  private segment = 0;
  /** Name of the track that each segment is of, by the segment's number. */
  private readonly trackNames: string[] = [];
  private trackName = "";

  constructor(name: string) {
    this.problems = new ProblemList(name);
    this.times = new XmlTimes(this.problems);
  }

  open(element: string, attributes: Readonly<Record<string, string>>, line: number): void {
    if (element === "trkpt" || element === "rtept") {
      this.keepPoint(); // a point that was never closed
      this.pointName = element;
      this.point = emptyFix(line, this.segment);
      this.point.latitude_deg = numberIn(attributes["lat"], fixBounds.latitude_deg);
      this.point.longitude_deg = numberIn(attributes["lon"], fixBounds.longitude_deg);
      if (Number.isNaN(this.point.latitude_deg) || Number.isNaN(this.point.longitude_deg)) {
        const found = `lat="${shown(attributes["lat"])}" lon="${shown(attributes["lon"])}"`;
        this.problems.bad("badPosition", line, `found ${found}, wanted degrees within 90 and 180`);
        this.point = undefined;
      }
    } else if (element === "trkseg" || element === "rte" || element === "trk") {
      this.keepPoint();
      this.segment++;
      if (element !== "trkseg") this.trackName = "";
      this.trackNames[this.segment] = this.trackName;
    }
    this.field = element;
    this.value = "";
  }

  text(text: string): void {
    if ((this.point || this.field === "name") && this.value.length < 100) {
      this.value += text;
    }
  }

  close(element: string): void {
    if (element === this.pointName) {
      this.keepPoint();
    } else if (this.point && element === this.field) {
      this.take(this.point, element, this.value.trim());
    } else if (element === "name" && element === this.field && this.segment > 0) {
      this.trackName = this.value.trim();
      this.trackNames[this.segment] = this.trackName;
    }
    this.field = "";
  }

  end(depth: number, line: number): void {
    if (this.point) {
      this.problems.bad("cutFile", this.point.line, "found a point that the end of the file cuts in half, left out");
    } else if (depth > 0) {
      this.problems.note(
        "cutFile",
        line,
        "found the end of the file before the end of the log, read as far as it goes",
      );
    }
  }

  finish(encoding: Encoding): FormatReading {
    const isTrack = this.track.count > 0;
    const builder = isTrack ? this.track : this.route;
    const words = { format: "GPX", point: isTrack ? "track point" : "route point", columns };
    return { ...finishXml(builder, this.problems, this.times, encoding, words), trackNames: this.trackNames };
  }

  private take(point: Fix, element: string, text: string): void {
    if (element === "time") {
      this.times.take(point, text);
    } else if (element === "ele") {
      point.elevation_m = numberIn(text, fixBounds.elevation_m);
    } else if (element === "speed") {
      point.speed_mps = numberIn(text, fixBounds.speed_mps);
    } else if (element === "hdop") {
      point.accuracy_m = accuracyOfHdop_m(numberIn(text, fixBounds.hdop));
    }
  }

  private keepPoint(): void {
    if (this.point) {
      (this.pointName === "trkpt" ? this.track : this.route).add(this.point);
    }
    this.point = undefined;
    this.pointName = "";
  }
}

function shown(text: string | undefined): string {
  return (text ?? "").slice(0, 40);
}
