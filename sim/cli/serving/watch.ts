import type { Print } from "../command.ts";
import { visibleLine } from "../printing/visible.ts";

/** Carries out work that tells how far it is, and shows that to whoever waits. Returns the work's result. */
export type Watch = <T>(words: string, isLong: boolean, work: (progress: Progress) => T) => T;
type Progress = (fraction_frac: number) => void;

/** As much of standard error as is needed here. */
interface Terminal {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

const startOfLine = "\r\u001B[K"; // back to the first column, and the line wiped

/**
 * Long work shows its percentage on one line of a terminal, wiped when it is done or has failed; a pipe or a file gets one line
 * of words instead, since nobody watches it. Work that is not long shows nothing.
 */
export function watchOn(warn: Print, terminal: Terminal = process.stderr): Watch {
  return (given, isLong, work) => {
    const words = visibleLine(given);
    if (!isLong) return work(() => undefined);
    if (terminal.isTTY !== true) {
      warn(`${words}, this takes a while`);
      return work(() => undefined);
    }
    let shown = "";
    try {
      return work((fraction_frac) => {
        const percentage = `${Math.floor(100 * fraction_frac)} %`;
        if (percentage === shown) return;
        shown = percentage;
        terminal.write(`${startOfLine}${words}: ${percentage}`);
      });
    } finally {
      if (shown !== "") terminal.write(startOfLine);
    }
  };
}
