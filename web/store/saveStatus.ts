import type { RefusalReason } from "./database/storeRefusal.ts";

/** How the open job stands: what the line under the title says. */
export type SaveStatus =
  | { readonly kind: "idle" }
  | { readonly kind: "saving" }
  | { readonly kind: "saved"; readonly at_ms: number }
  | { readonly kind: "refused"; readonly reason: RefusalReason; readonly message: string };

/** Where jobs live in this browser, and how safely. */
export interface Place {
  readonly kind: "database" | "memory";
  /** Why there is no database, in the browser's words or ours. */
  readonly why?: string;
  /** Whether the browser promised not to clear the data by itself; nothing where it does not say. */
  readonly isKept?: boolean;
  readonly used_MB?: number;
  readonly room_MB?: number;
  /** Records that this program cannot understand. */
  readonly unreadable: number;
}

/** The save status in words, for a line that is always on the page. */
export function statusSentence(status: SaveStatus, place: Place, clock: (at_ms: number) => string): string {
  switch (status.kind) {
    case "idle":
      return place.kind === "memory" ? "Held in this page only." : "Nothing to save.";
    case "saving":
      return "Saving…";
    case "saved":
      return place.kind === "memory"
        ? `Held in this page only since ${clock(status.at_ms)}: save it as a file before you close the page.`
        : `Saved in this browser at ${clock(status.at_ms)}.`;
    case "refused":
      return `Not saved: ${refusal[status.reason]} The job is still whole in this page: save it as a file now.`;
  }
}

const refusal: Record<RefusalReason, string> = {
  full: "the browser has no room left.",
  differs: "what the browser stored is not what was written.",
  outdated: "a newer edition of this page has changed the database; reload this page.",
  orphaned:
    "the browser's data were cleared, and this page can store again only after it is loaded anew; what it holds is set aside for that.",
  failed: "the browser refuses to store anything.",
};

/** Said from this share of the browser's room on, so that a full store does not come as a surprise. */
const NEARLY_FULL_frac = 0.8;

/** Where jobs live, in plain words. */
export function placeSentence(place: Place): string {
  if (place.kind === "memory") {
    const why = place.why === undefined ? "" : ` (${place.why})`;
    return `The browser's database cannot be used${why}. Jobs live in this page until it is closed: save them as files.`;
  }
  const promise =
    place.isKept === true
      ? "The browser has promised not to clear them by itself; clearing its data by hand still does."
      : "The browser may clear them when the disk runs short or when its data are cleared.";
  const unreadable =
    place.unreadable === 0
      ? ""
      : ` ${place.unreadable === 1 ? "One record" : `${place.unreadable} records`} in it cannot be read and ${
          place.unreadable === 1 ? "was" : "were"
        } left alone.`;
  const { used_MB = 0, room_MB = Number.POSITIVE_INFINITY } = place;
  const room =
    used_MB < NEARLY_FULL_frac * room_MB
      ? ""
      : ` ${used_MB.toPrecision(3)} MB of the ${room_MB.toPrecision(3)} MB it allows are used.`;
  return `Jobs live in this browser on this machine, for this address only, and nowhere else. ${promise} Keep file copies.${room}${unreadable}`;
}
