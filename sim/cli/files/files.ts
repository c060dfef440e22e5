import {
  closeSync,
  constants,
  lstatSync,
  openSync,
  readdirSync,
  readFileSync,
  realpathSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname } from "node:path";
import { nearest } from "../../../shared/nearest.ts";
import { InputError, inputError } from "../../../shared/problems.ts";

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

/** `replace` where the person allowed a file of this name to be replaced; `ask` where `--force` would allow it; else never. */
type IfThere = "replace" | "ask" | "keep";

/**
 * Writes a text into a file of its own: never through a link, which may lead anywhere, and over a file that is there only with
 * `replace`. Throws InputError where the file cannot be written.
 */
export function writeText(path: string, text: string, ifThere: IfThere): void {
  try {
    checkPlace(path, ifThere);
    const file = openSync(path, ifThere === "replace" ? replacing : creating);
    try {
      writeFileSync(file, text);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw explained(path, error, "written");
  }
}

/** Throws InputError, before a long run, where `writeText` would for what stands at the path already. */
export function checkPlace(path: string, ifThere: IfThere): void {
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (found === undefined) return;
  if (found.isSymbolicLink())
    throw inputError("file-link", path, "found a link, no link is written through; choose another name");
  if (found.isDirectory()) throw inputError("file-folder", path, "found a folder, a file is wanted");
  if (ifThere === "replace") return;
  const advice = ifThere === "ask" ? "--force replaces it" : "it is left as it is; choose another name";
  throw inputError("file-exists", path, `found a file of this name already; ${advice}`);
}

// The system itself refuses a link, and without leave to replace a file, that came between the check and the writing.
const creating = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL;
const replacing = constants.O_WRONLY | constants.O_CREAT | constants.O_TRUNC | (constants.O_NOFOLLOW ?? 0);

/** What became of standard output, for a person. */
export function outputFault(error: NodeJS.ErrnoException): string {
  const full = error.code === "ENOSPC" || error.code === "EDQUOT" || error.code === "EFBIG";
  return full ? "found no room left to write into" : `could not be written (${error.code ?? error.message})`;
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
      return inputError(
        "file-exists",
        path,
        "found a file of this name that was not there before; it is left as it is",
      );
    case "ELOOP":
      return inputError("file-link", path, "found a link that leads back to itself, or that is not followed here");
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return inputError("file-access", path, `found a file or folder that may not be ${done} by you`);
    case "ENAMETOOLONG":
      return inputError("file-name", path, "found a name longer than this system allows");
    case "ENOSPC":
    case "EDQUOT":
    case "EFBIG":
      return inputError("file-space", path, "found no room left on the disk to write into");
    case "EIO":
      return inputError("file-broken", path, `found a fault of the disk or device, the file cannot be ${done}`);
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
