import { EmptyFields } from "../../editing/emptied.ts";

/** Throws where one of the fields emptied by hand is needed. */
export function refuseEmpty(emptied: string, isNeeded: (path: string) => boolean): void {
  const needed = emptied.split("|").filter((path) => path !== "" && isNeeded(path));
  if (needed.length > 0) throw new EmptyFields(needed);
}
