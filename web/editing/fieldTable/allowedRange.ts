import * as z from "zod";
import { Job } from "../../../shared/job/job.ts";
import { atPath } from "../../../shared/job/path.ts";
import { unwrap } from "../../../shared/job/schemaAt.ts";

export interface AllowedRange {
  readonly min: number;
  readonly max: number;
}

/** The bounds that the job's own schema sets for the number at a path; nothing where it is no bounded number. */
export function allowedRange(job: Job, path: string): AllowedRange | undefined {
  let shape: unknown = Job;
  const walked: string[] = [];
  for (const key of path.split(".")) {
    shape = child(unwrap(shape), key, atPath(job, walked.join(".")) ?? job);
    walked.push(key);
  }
  const number = unwrap(shape);
  if (!(number instanceof z.ZodNumber)) return undefined;
  const { minValue, maxValue } = number;
  return minValue === null || maxValue === null ? undefined : { min: minValue, max: maxValue };
}

function child(shape: unknown, key: string, value: unknown): unknown {
  if (shape instanceof z.ZodObject) return shape.shape[key];
  if (shape instanceof z.ZodArray) return shape.element;
  // Of alternatives, the one that the job now has: its `kind` says which.
  if (shape instanceof z.ZodDiscriminatedUnion) {
    const kind = atPath(value, "kind");
    const options: readonly unknown[] = shape.options;
    const chosen = options.find((option) => {
      const literal = option instanceof z.ZodObject ? option.shape["kind"] : undefined;
      return literal instanceof z.ZodLiteral && literal.value === kind;
    });
    return chosen instanceof z.ZodObject ? chosen.shape[key] : undefined;
  }
  // Of alternatives without a name, that which knows the key.
  if (shape instanceof z.ZodUnion) {
    const options: readonly unknown[] = shape.options;
    const knowing = options.find((option) => option instanceof z.ZodObject && key in option.shape);
    return knowing instanceof z.ZodObject ? knowing.shape[key] : undefined;
  }
  return undefined;
}
