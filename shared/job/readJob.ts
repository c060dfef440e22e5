import type * as z from "zod";
import { InputError, inputError } from "../problems.ts";
import { checkSize } from "./checkSize.ts";
import { describeFound } from "./describeFound.ts";
import { inPresentNames } from "./formerNames.ts";
import { JOB_FORMAT, JOB_VERSION, Job } from "./job.ts";
import { PREDICTION_LAYOUT } from "./schema/predictions.ts";
import { Road } from "./schema/road.ts";
import { toProblems } from "./toProblems.ts";

const MOST_LETTERS = 100_000_000; // the most values that a job may hold, each of 25 letters
const listedFaults = 100; // a wrong list makes as many faults as it has entries; the rest is counted

/**
 * The job in a file's text. Throws InputError with every fault: not JSON, not a job, a newer version, or each wrong
 * value with its path, what was found and what is allowed. `where` names the file.
 */
export function readJobText(text: string, where: string): Job {
  if (text.length > MOST_LETTERS) {
    const found = `found ${Math.round(text.length / 1e6)} million letters`;
    throw inputError("tooLarge", where, `${found}, at most ${MOST_LETTERS / 1e6} million allowed in a job file`);
  }
  const tidy = text.replace(/^\uFEFF/, "");
  let json: unknown;
  try {
    json = JSON.parse(tidy);
  } catch (error) {
    throw notJson(tidy, where, error);
  }
  return readJob(json, where);
}

/** A saved job with a slip in it gets the line of the slip, where the engine says it; of anything else it is said what it is not. */
function notJson(text: string, where: string, error: unknown): InputError {
  if (text.trim() === "") return inputError("notJson", where, "found nothing in it, a saved job file wanted");
  const line = /^\s*\{/.test(text) ? lineOf(text, error) : undefined;
  if (line !== undefined) {
    const wanted = "look for a comma, quote or bracket too many or too few";
    return inputError("notJson", `${where} line ${line}`, `found a slip in the JSON here or just before it, ${wanted}`);
  }
  const start = text.slice(0, 12).replace(/[^\x20-\x7e]/g, "·");
  return inputError("notJson", where, `found text that is not JSON (it begins "${start}"), a saved job file wanted`);
}

/** Engines word it differently; each names a place (`at position 17`, `at line 2 column 3`) unless the text just ends. */
function lineOf(text: string, error: unknown): number | undefined {
  const notice = error instanceof SyntaxError ? error.message : "";
  const position = /position (\d+)/.exec(notice)?.[1];
  if (position !== undefined) return text.slice(0, Number(position)).split("\n").length;
  const line = /line (\d+)/.exec(notice)?.[1];
  if (line !== undefined) return Number(line);
  return /end of (JSON|data|input)|EOF/i.test(notice) ? text.trimEnd().split("\n").length : undefined;
}

/** The job in a parsed document; see `readJobText`. */
export function readJob(json: unknown, where = "document"): Job {
  if (typeof json !== "object" || json === null || Array.isArray(json)) {
    throw inputError("notAJob", where, `found ${describeFound(json)}, a job document wanted`);
  }
  const { format, version } = json as { format?: unknown; version?: unknown };
  if (format !== JOB_FORMAT) {
    throw inputError("notAJob", where, `found ${describeFound(format)} as its format, "${JOB_FORMAT}" wanted`);
  }
  if (typeof version === "number" && Number.isInteger(version) && version > JOB_VERSION) {
    throw inputError(
      "newerVersion",
      where,
      `found version ${version}, this program reads up to version ${JOB_VERSION}: open it with a newer program`,
    );
  }
  checkSize(json, where);
  checkPredictions(json);
  return held(Job, inPresentNames(json), where);
}

/** A prediction laid out by a newer program has keys that the schema would refuse one by one: one sentence says it all. */
function checkPredictions(json: object): void {
  const { predictions } = json as { predictions?: unknown };
  if (!Array.isArray(predictions)) return;
  predictions.forEach((each: unknown, i) => {
    const { layout, program } = Object(each) as { layout?: unknown; program?: unknown };
    if (typeof layout !== "number" || !Number.isInteger(layout) || layout <= PREDICTION_LAYOUT) return;
    const by = typeof program === "string" && program.length < 20 ? ` by version ${program}` : "";
    throw inputError(
      "newerVersion",
      `predictions.${i}.layout`,
      `found a prediction frozen${by} in layout ${layout}, this program reads up to layout ${PREDICTION_LAYOUT}: open the job with a newer program`,
    );
  });
}

/** A road by itself, as it stands in a job; for who makes one and wants it held to the same bounds. */
export function readRoad(json: unknown, where = "road"): Road {
  return held(Road, json, where);
}

function held<Schema extends z.ZodType>(schema: Schema, json: unknown, where: string): z.output<Schema> {
  const result = parsed(schema, json, where);
  if (result.success) return result.data;
  const problems = result.error.issues.flatMap((issue) => toProblems(issue, json, schema));
  if (problems.length <= listedFaults) throw new InputError(problems);
  const message = `found ${problems.length - listedFaults} more faults of these kinds`;
  throw new InputError([...problems.slice(0, listedFaults), { code: "moreFaults", where, message }]);
}

/** The schema library hands on faults as arguments of a call, of which there can be some hundred thousand at most. */
function parsed<Schema extends z.ZodType>(schema: Schema, json: unknown, where: string) {
  try {
    return schema.safeParse(json);
  } catch (error) {
    if (error instanceof RangeError) throw inputError("moreFaults", where, "found more faults than can be listed");
    throw error;
  }
}
