import { readdirSync, readFileSync, realpathSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import { nearest } from "../../shared/nearest.ts";
import { InputError, inputError } from "../../shared/problems.ts";

const largestFile_MB = 400; // longer texts do not fit one string of the language

/**
 * The bytes of a file. Throws InputError for what is missing (with the nearest name there is), a folder, unreadable, or larger than
 * the limit, which is then said before a byte is read.
 */
export function readBytes(path: string, most_MB = largestFile_MB): Buffer {
  try {
    const found = statSync(path);
    if (found.isDirectory()) throw inputError("file-folder", path, "found a folder, a file is wanted");
    if (found.size > most_MB * 1e6) {
      const size_MB = Math.round(found.size / 1e6);
      throw inputError("file-large", path, `found ${size_MB} MB, at most ${most_MB} MB can be read`);
    }
    return readFileSync(path);
  } catch (error) {
    throw explained(path, error, "read");
  }
}

/** The text of a file in UTF-8. Throws InputError as `readBytes`, and for what is no text, such as a photograph. */
export function readText(path: string): string {
  const bytes = readBytes(path);
  const wanted = "a text file in UTF-8 is wanted";
  if (bytes.includes(0))
    throw inputError("file-not-text", path, `found bytes that are no text, as in a photograph; ${wanted}`);
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: false }).decode(bytes);
  } catch {
    throw inputError("file-not-text", path, `found bytes that are no UTF-8 text, as in a photograph; ${wanted}`);
  }
}

/** Writes a text. With `isNew` it never writes over a file. Throws InputError where the file cannot be written. */
export function writeText(path: string, text: string, { isNew = false } = {}): void {
  try {
    writeFileSync(path, text, { flag: isNew ? "wx" : "w" });
  } catch (error) {
    throw explained(path, error, "written");
  }
}

/** True where two paths lead to one and the same file, through links of either kind too; false where either is missing. */
export function isSameFile(one: string, other: string): boolean {
  try {
    if (realpathSync(one) === realpathSync(other)) return true;
    const a = statSync(one, { bigint: true });
    const b = statSync(other, { bigint: true });
    return a.ino !== 0n && a.ino === b.ino && a.dev === b.dev;
  } catch {
    return false;
  }
}

/** What the system's code means to a person; anything else is passed on, being no fault of the input. */
function explained(path: string, error: unknown, done: "read" | "written"): unknown {
  if (error instanceof InputError || !(error instanceof Error) || !("code" in error)) return error;
  switch (error.code) {
    case "ENOENT":
    case "ENOTDIR":
      if (done === "written") return inputError("file-missing", path, `found no folder ${dirname(path)} to write into`);
      return inputError("file-missing", path, `found no file of this name${nearName(path)}`);
    case "EISDIR":
      return inputError("file-folder", path, "found a folder, a file is wanted");
    case "EEXIST":
      if (statSync(path, { throwIfNoEntry: false })?.isDirectory())
        return inputError("file-folder", path, "found a folder, a file is wanted");
      return inputError(
        "file-exists",
        path,
        "found a file of this name already, it is left as it is; choose another name",
      );
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return inputError("file-access", path, `found a file or folder that may not be ${done} by you`);
    case "ENAMETOOLONG":
      return inputError("file-name", path, "found a name longer than this system allows");
    case "ENOSPC":
      return inputError("file-space", path, "found no room left on the disk to write into");
    default:
      return error;
  }
}

function nearName(path: string): string {
  try {
    const near = nearest(basename(path), readdirSync(dirname(path)));
    return near ? `; did you mean ${near}` : "";
  } catch {
    return ""; // there is no such folder either
  }
}
