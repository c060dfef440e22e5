/** A text that stands in a field and is not in the job. */
export interface Draft {
  readonly typed: string;
  /**
   * Why it is not in the job: unreadable, out of range, or at odds with another field. Absent where nothing is wrong with it:
   * the text is of something that is not in the job yet, such as the title of a road still to be made.
   */
  readonly problem?: string;
  /** The value read from the text, where it could be read; it is tried again when another field changes. */
  readonly value?: unknown;
}

/** Drafts by the path of their field, such as `vehicle.load_kg`. */
export type Drafts = Readonly<Record<string, Draft>>;
