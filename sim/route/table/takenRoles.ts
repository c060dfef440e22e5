import type { ColumnRole } from "../log/logFile.ts";
import type { SampleColumn } from "./sampleColumns.ts";

/** Which roles have found their column, and which columns are still free: each guess takes from what the next one has left. */
export class TakenRoles {
  private readonly taken = new Map<number, { readonly role: ColumnRole; readonly evidence: string }>();
  private readonly left = new Map<number, string>();
  private readonly settled = new Set<ColumnRole>();
  private readonly columns: readonly SampleColumn[];

  /** A role chosen by a person is settled, with the column chosen or with "none". */
  constructor(columns: readonly SampleColumn[], chosen: Partial<Record<ColumnRole, number | "none">>) {
    this.columns = columns;
    for (const [role, index] of Object.entries(chosen) as [ColumnRole, number | "none"][]) {
      this.settled.add(role);
      if (index !== "none" && columns[index]) {
        this.taken.set(index, { role, evidence: "chosen" });
      }
    }
  }

  has(role: ColumnRole): boolean {
    return this.settled.has(role);
  }

  take(column: SampleColumn, role: ColumnRole, evidence: string): void {
    this.taken.set(column.index, { role, evidence });
    this.settled.add(role);
  }

  /** Says why a column that looked like more was not taken. */
  leave(column: SampleColumn, why: string): void {
    this.left.set(column.index, why);
  }

  whyLeft(column: SampleColumn): string | undefined {
    return this.left.get(column.index);
  }

  /** Columns without a role that none was denied to, in order. */
  free(): readonly SampleColumn[] {
    return this.columns.filter(({ index }) => !this.taken.has(index) && !this.left.has(index));
  }

  /** What a column was taken for, and why. */
  of(column: SampleColumn): { readonly role: ColumnRole; readonly evidence: string } | undefined {
    return this.taken.get(column.index);
  }
}
