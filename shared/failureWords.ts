/** Errors whose message is a sentence for the reader. By name, since an error that comes out of a worker is of no class of ours. */
const sentences = ["InputError", "EmptyFields"];

/** Whether an error's message is written for whoever reads the page, and not for us. */
export function isForReader(error: unknown): error is Error {
  return error instanceof Error && sentences.includes(error.name);
}

/** What a failure says on the page: its own sentence where it has one for the reader; of a fault of ours, that it is one. */
export function failureWords(error: unknown): string {
  if (isForReader(error)) return error.message.replace(/\.?$/, ".");
  return "The page made a mistake of its own here. Nothing typed is lost: try again, or reload the page.";
}
