import { inputError } from "../problems.ts";

/** Values in a job at most: two million samples with their times, 55 hours at 10 a second. */
const MOST_VALUES = 8_000_000;
/** Keys in a group at most; the largest is that of the origins, of which a job has some hundred. */
const MOST_KEYS = 2000;

/**
 * Refuses a document that is larger than any job, before the schema looks at every value of it. Throws InputError.
 * `where` names the file.
 */
export function checkSize(json: unknown, where: string): void {
  let count = 0;
  const walk = (value: object, path: string): void => {
    const isList = Array.isArray(value);
    const size = isList ? value.length : Object.keys(value).length;
    if (!isList && size > MOST_KEYS) {
      throw inputError("tooLarge", path || where, `found ${size} values by name, at most ${MOST_KEYS} allowed`);
    }
    count += size;
    if (count > MOST_VALUES) {
      throw inputError("tooLarge", where, `found more than ${MOST_VALUES} values, at most as many allowed in a job`);
    }
    if (isList) {
      value.forEach((each: unknown, i) => {
        if (typeof each === "object" && each !== null) walk(each, `${path}.${i}`);
      });
      return;
    }
    for (const [key, each] of Object.entries(value)) {
      if (typeof each === "object" && each !== null) walk(each, path === "" ? key : `${path}.${key}`);
    }
  };
  if (typeof json === "object" && json !== null) walk(json, "");
}
