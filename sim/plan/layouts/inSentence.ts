import type { Message } from "../../../shared/quantity/message.ts";

/** A sentence as the rest of another one: its first letter small. */
export function inSentence([first, ...rest]: Message): Message {
  return typeof first === "string" ? [first.charAt(0).toLowerCase() + first.slice(1), ...rest] : [first, ...rest];
}
