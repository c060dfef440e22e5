import type { Job } from "../../../shared/job/job.ts";
import { readJobText } from "../../../shared/job/readJob.ts";
import { inputError } from "../../../shared/problems.ts";

/** Larger files are refused before they are read: sixty recorded roads of twelve hours at 1 Hz stay well below it. */
export const LARGEST_JOB_FILE_MB = 64;

const B_PER_MB = 1e6;

/** What this reader needs of a browser's File. */
export interface FileLike {
  readonly name: string;
  readonly size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

/**
 * The job in a file picked or dropped. Throws InputError with everything that is wrong with it: too large, empty, not
 * text, or whatever the job reader finds. UTF-8 with or without a byte order mark.
 */
export async function readJobFile(file: FileLike): Promise<Job> {
  const size_MB = file.size / B_PER_MB;
  if (size_MB > LARGEST_JOB_FILE_MB) {
    const found = `found a file of ${size_MB.toPrecision(3)} MB`;
    throw inputError("tooLarge", file.name, `${found}, at most ${LARGEST_JOB_FILE_MB} MB allowed for a job`);
  }
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    throw inputError("unreadable", file.name, "found something that cannot be read as a file, such as a folder");
  }
  if (bytes.byteLength === 0) throw inputError("empty", file.name, "found an empty file, a saved job file wanted");
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw inputError("notText", file.name, "found bytes that are not text in UTF-8, a saved job file wanted");
  }
  return readJobText(text, file.name);
}
