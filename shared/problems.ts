/** One thing wrong with what came in from outside, said so that a person can mend it. */
export interface Problem {
  /** Stable name of the fault; what tests and the page check. */
  readonly code: string;
  /** A path in a document (`vehicle.load_kg`) or a place in a file (`monday.csv line 412`). */
  readonly where: string;
  /** What was found and what is allowed, with units; lower case, no full stop. */
  readonly message: string;
}

/**
 * The input is wrong. Carries every problem found, not only the first, so that a person mends a file once.
 * Thrown by the readers at the edges and by nothing behind them.
 */
export class InputError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => `${problem.where}: ${problem.message}`).join("\n"));
    this.name = "InputError";
    this.problems = problems;
  }
}

/** An InputError with a single problem: the usual case in a reader. */
export function inputError(code: string, where: string, message: string): InputError {
  return new InputError([{ code, where, message }]);
}
