import type * as z from "zod";
import { toProblems } from "../job/toProblems.ts";
import { InputError } from "../problems.ts";

/**
 * One part, or a list of parts, from a parsed document (a workshop's own list, say), held to one of the part schemas.
 * Throws InputError with every fault, its path, what was found and what is allowed; `where` names the file.
 */
export function readPart<Data>(schema: z.ZodType<Data>, json: unknown, where = "part"): Data {
  const result = schema.safeParse(json);
  if (result.success) return result.data;
  const problems = result.error.issues.flatMap((issue) => toProblems(issue, json, schema));
  throw new InputError(problems.map((problem) => ({ ...problem, where: `${where} ${problem.where}` })));
}
