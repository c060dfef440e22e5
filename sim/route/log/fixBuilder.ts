import { type ExtraName, extraNames, type Fix, type Fixes } from "./fixes.ts";

const columnNames = ["time_s", "latitude_deg", "longitude_deg", "speed_mps", "elevation_m", "accuracy_m"] as const;

/** Columns that grow by doubling while a file is read, so that a long log costs no array of row objects. */
export class FixBuilder {
  count = 0;
  readonly columns: Record<(typeof columnNames)[number], Float64Array>;
  private line = new Uint32Array(1024);
  private segment = new Uint32Array(1024);
  private readonly extras = new Map<ExtraName, Float64Array>();

  constructor() {
    const column = () => new Float64Array(1024);
    this.columns = {
      time_s: column(),
      latitude_deg: column(),
      longitude_deg: column(),
      speed_mps: column(),
      elevation_m: column(),
      accuracy_m: column(),
    };
  }

  add(fix: Fix): void {
    if (this.count === this.line.length) {
      this.grow();
    }
    const i = this.count;
    for (const name of columnNames) {
      this.columns[name][i] = fix[name];
    }
    this.line[i] = fix.line;
    this.segment[i] = fix.segment;
    for (const name of extraNames) {
      const value = fix.extras[name];
      if (value !== undefined) {
        this.extraColumn(name)[i] = value;
      }
    }
    this.count = i + 1;
  }

  /** Keeps only the fixes for which the function is true. */
  keep(isKept: (i: number) => boolean): void {
    const all = [...Object.values(this.columns), ...this.extras.values(), this.line, this.segment];
    let kept = 0;
    for (let i = 0; i < this.count; i++) {
      if (isKept(i)) {
        for (const column of all) {
          column[kept] = column[i];
        }
        kept++;
      }
    }
    for (const column of this.extras.values()) {
      column.fill(Number.NaN, kept);
    }
    this.count = kept;
  }

  finish(): Fixes {
    const n = this.count;
    const extras: Partial<Record<ExtraName, Float64Array>> = {};
    for (const [name, column] of this.extras) {
      extras[name] = column.slice(0, n);
    }
    return {
      count: n,
      time_s: this.columns.time_s.slice(0, n),
      latitude_deg: this.columns.latitude_deg.slice(0, n),
      longitude_deg: this.columns.longitude_deg.slice(0, n),
      speed_mps: this.columns.speed_mps.slice(0, n),
      elevation_m: this.columns.elevation_m.slice(0, n),
      accuracy_m: this.columns.accuracy_m.slice(0, n),
      line: this.line.slice(0, n),
      segment: this.segment.slice(0, n),
      extras,
    };
  }

  private extraColumn(name: ExtraName): Float64Array {
    const known = this.extras.get(name);
    if (known) {
      return known;
    }
    const column = new Float64Array(this.line.length).fill(Number.NaN);
    this.extras.set(name, column);
    return column;
  }

  private grow(): void {
    const length = this.line.length * 2;
    const grown = (old: Float64Array) => {
      const column = new Float64Array(length).fill(Number.NaN, old.length);
      column.set(old);
      return column;
    };
    for (const name of columnNames) {
      this.columns[name] = grown(this.columns[name]);
    }
    for (const [name, column] of this.extras) {
      this.extras.set(name, grown(column));
    }
    const line = new Uint32Array(length);
    line.set(this.line);
    this.line = line;
    const segment = new Uint32Array(length);
    segment.set(this.segment);
    this.segment = segment;
  }
}
