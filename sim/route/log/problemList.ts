import type { Problem } from "../../../shared/problems.ts";

/** A broken file can give a fault a line; this many of each kind are kept word for word, the rest only counted. */
const KEPT_PER_CODE = 20;

/** Problems of one file, gathered while it is read. */
export class ProblemList {
  badLines = 0;
  private readonly kept: Problem[] = [];
  private readonly counts = new Map<string, number>();
  private readonly file: string;

  constructor(file: string) {
    this.file = file;
  }

  /** Something worth saying that cost no line; line 0 means the file as a whole. */
  note(code: string, line: number, message: string): void {
    const count = (this.counts.get(code) ?? 0) + 1;
    this.counts.set(code, count);
    if (count <= KEPT_PER_CODE) {
      this.kept.push({ code, where: line > 0 ? `${this.file} line ${line}` : this.file, message });
    }
  }

  /** A line, point or sentence that could not be used. */
  bad(code: string, line: number, message: string): void {
    this.badLines++;
    this.note(code, line, message);
  }

  count(code: string): number {
    return this.counts.get(code) ?? 0;
  }

  finish(): readonly Problem[] {
    const more: Problem[] = [];
    for (const [code, count] of this.counts) {
      if (count > KEPT_PER_CODE) {
        more.push({
          code,
          where: this.file,
          message: `${count - KEPT_PER_CODE} more of the kind "${code}", not listed`,
        });
      }
    }
    return [...this.kept, ...more];
  }
}
