import type { Fix } from "../log/fixes.ts";
import type { Hemisphere, Question } from "../log/logFile.ts";
import { type AngleForm, readAngle } from "./readAngle.ts";
import { readNumber } from "./readNumber.ts";
import type { TableColumns } from "./tableColumns.ts";
import type { TableLayout } from "./tableLayout.ts";

/** Reads the positions of one table's rows, and keeps whether anything in them says north or south, east or west. */
export class TablePositions {
  private readonly form: AngleForm;
  private sawSign = false;
  private southward = 0;
  private westward = 0;
  private readonly layout: TableLayout;
  private readonly columns: TableColumns;
  private readonly hemisphere: Hemisphere | undefined;

  constructor(layout: TableLayout, columns: TableColumns, hemisphere: Hemisphere | undefined) {
    this.layout = layout;
    this.columns = columns;
    this.hemisphere = hemisphere;
    this.form = angleForm(layout, columns);
  }

  /** Puts the row's position into the fix, or gives back what stands there where it is none. Nothing written is no fault. */
  read(row: readonly string[], fix: Fix): { readonly found: string } | undefined {
    const { columns, layout, hemisphere } = this;
    const written = [columns.cell(row, "lat"), columns.cell(row, "lon")] as const;
    if (!columns.has("lat") || !columns.has("lon") || written.every((cell) => cell.trim() === "")) {
      return undefined;
    }
    const latText = written[0] + columns.cell(row, "latHemisphere").trim();
    const lonText = written[1] + columns.cell(row, "lonHemisphere").trim();
    const lat = readAngle(latText, this.form, layout.decimal, 90);
    const lon = readAngle(lonText, this.form, layout.decimal, 180);
    if (!lat || !lon) {
      return { found: `${latText.slice(0, 20)}, ${lonText.slice(0, 20)}` };
    }
    this.sawSign ||= lat.isSigned || lon.isSigned;
    this.southward += Math.sign(-lat.value_deg);
    this.westward += Math.sign(-lon.value_deg);
    fix.latitude_deg = lat.isSigned || !hemisphere?.includes("S") ? lat.value_deg : -lat.value_deg;
    fix.longitude_deg = lon.isSigned || !hemisphere?.includes("W") ? lon.value_deg : -lon.value_deg;
    return undefined;
  }

  /** Which quarter of the globe the positions lie in, once all have been read. */
  question(): Question {
    const { hemisphere } = this;
    const quarter: Hemisphere = `${this.southward > 0 ? "S" : "N"}${this.westward > 0 ? "W" : "E"}`;
    const isPlain = this.form === "degrees";
    const signed = "the file writes signs or letters";
    const convention = "decimal degrees without a minus: north and east, as WGS84 degrees are written";
    const open = "degrees and minutes without sign or letter";
    return {
      name: "hemisphere",
      option: "--hemisphere",
      choices: ["NE", "NW", "SE", "SW"],
      guess: this.sawSign ? quarter : (hemisphere ?? "NE"),
      evidence: this.sawSign ? signed : hemisphere ? "given" : isPlain ? convention : open,
      decided: this.sawSign || hemisphere !== undefined || isPlain,
    };
  }
}

/** Degrees and minutes run together where a number lies beyond what degrees reach, and its last two digits below 60. */
function angleForm(layout: TableLayout, columns: TableColumns): AngleForm {
  const goesBeyond = (role: "lat" | "lon", limit: number) =>
    layout.rows.some((row) => {
      const number = readNumber(columns.cell(row, role).replace(/[NSEW]/gi, ""), layout.decimal);
      return Math.abs(number) > limit && Math.abs(number) % 100 < 60;
    });
  return goesBeyond("lat", 90) || goesBeyond("lon", 180) ? "degreesMinutes" : "degrees";
}
