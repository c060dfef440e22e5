import type * as z from "zod";
import { InputError } from "../problems.ts";

/**
 * One part, or a list of parts, from a parsed document (a workshop's own list, say), held to one of the part schemas.
 * Throws InputError with every fault and its path.
 */
export function readPart<Data>(schema: z.ZodType<Data>, json: unknown, where = "part"): Data {
  const result = schema.safeParse(json);
  if (result.success) return result.data;
  throw new InputError(
    result.error.issues.map(({ code, path, message }) => ({
      code: code === "custom" ? "contradicts" : code === "unrecognized_keys" ? "unknownKey" : "wrong",
      where: path.length > 0 ? `${where} ${path.map(String).join(".")}` : where,
      message: message.charAt(0).toLowerCase() + message.slice(1),
    })),
  );
}
