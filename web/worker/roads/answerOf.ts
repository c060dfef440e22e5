import { InputError } from "../../../shared/problems.ts";
import type { Answer } from "./roadsApi.ts";

/** What came of work that may refuse what it was given; an InputError does not come whole out of a worker, its problems do. */
export async function answerOf<T>(work: () => Promise<T>): Promise<Answer<T>> {
  try {
    return { kind: "done", value: await work() };
  } catch (error) {
    if (error instanceof InputError) return { kind: "refused", problems: error.problems };
    throw error;
  }
}
