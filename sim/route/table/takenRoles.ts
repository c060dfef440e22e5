import type { ColumnRole } from "../log/logFile.ts";
import type { SampleColumn } from "./sampleColumns.ts";

/** Which roles have found their column, and which columns are still free: each guess takes from what the next one has left. */
export class TakenRoles {
  private readonly taken = new Map<number, { readonly role: ColumnRole; readonly evidence: string }>();
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

  /** Columns without a role, in order. */
  free(): readonly SampleColumn[] {
    return this.columns.filter((column) => !this.taken.has(column.index));
  }

  /** What a column was taken for, and why. */
  of(column: SampleColumn): { readonly role: ColumnRole; readonly evidence: string } | undefined {
    return this.taken.get(column.index);
  }
}
