/** Why a store would not do what it was asked. */
export type RefusalReason =
  /** No room left. */
  | "full"
  /** What was read back is not what was written. */
  | "differs"
  /** A newer edition of this program has changed the database since. */
  | "outdated"
  /** The site's data were cleared under this page: what it stores now, no page will find again. */
  | "orphaned"
  /** Anything else the browser says. */
  | "failed";

/** A store's refusal with its reason and what the browser said. */
export class StoreRefusal extends Error {
  readonly reason: RefusalReason;

  constructor(reason: RefusalReason, message: string) {
    super(message);
    this.name = "StoreRefusal";
    this.reason = reason;
  }
}

/** A StoreRefusal for whatever a browser's database threw. */
export function toRefusal(error: unknown): StoreRefusal {
  if (error instanceof StoreRefusal) return error;
  const name = error instanceof Error ? error.name : "";
  const message = error instanceof Error ? error.message : String(error);
  if (name === "QuotaExceededError" || /quota|disk.*full|no space/i.test(message)) {
    return new StoreRefusal("full", message || "no room left");
  }
  if (name === "VersionError") return new StoreRefusal("outdated", message);
  return new StoreRefusal("failed", message || name || "no reason given");
}
