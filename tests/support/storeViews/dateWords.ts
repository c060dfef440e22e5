const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });
const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric" });

/** A moment (ms since 1970) as the time of day here: `14:05`. */
export function clockWords(at_ms: number): string {
  return clock.format(at_ms);
}

/** A moment (ms since 1970) as day and time here: `3 May 2026, 14:05`. */
export function dateWords(at_ms: number): string {
  return `${day.format(at_ms)}, ${clock.format(at_ms)}`;
}
