/** The day of a moment, such as 25 Nov 2026. */
export const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });

const hour = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });

/** The time of day of a moment, such as 13:40. */
export const clock = (at_ms: number): string => hour.format(at_ms);
