import { type InputError, inputError } from "../../shared/problems.ts";

/**
 * A part of the page that is fetched when it is first needed. Where it cannot be had (the server was stopped, or has another
 * edition of the page by now) this is a sentence for the reader and not the address of a file. A browser remembers that a part
 * could not be had for as long as the page is open, so that only loading the page anew tries again.
 */
export async function fetchPart<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (error) {
    // What a part itself throws as it starts is a fault of ours, and stays one.
    if (error instanceof TypeError && /import|module|fetch/i.test(error.message)) throw partMissing();
    throw error;
  }
}

/** The sentence for a part that could not be fetched. */
export function partMissing(): InputError {
  return inputError(
    "notFetched",
    "this page",
    "a part of it could not be fetched: its server was stopped, or has a newer edition. Start the server, then reload the page. Nothing typed is lost",
  );
}
