import { inputError } from "../../../shared/problems.ts";

/** The page in one file as it lies beside the served page. */
const BESIDE = "bellhousing.html";

/**
 * The notebook as one file without a job: this very page where it is one file (`source`, taken before anything was put into
 * it), else the one that is served beside it. Throws InputError where that is not there.
 */
export async function pageInOneFile(source: string | undefined, get: typeof fetch = fetch): Promise<string> {
  if (source !== undefined) return source;
  const answer = await get(BESIDE).catch(() => undefined);
  if (answer?.ok) return answer.text();
  const message =
    "the page that is sent to a client could not be fetched: start the notebook's server again and try once more";
  throw inputError("noPage", "sharing", message);
}

/** The text of this page where it is one file, before anything is put into it; nothing where its script lies beside it. */
export function sourceOf(page: Document): string | undefined {
  const isOneFile = page.querySelector("script[src], link[rel=stylesheet]") === null;
  if (!isOneFile) return undefined;
  const comments = [...page.childNodes].filter((node) => node.nodeType === page.COMMENT_NODE); // licences, after the page
  const after = comments.map(({ nodeValue }) => `<!--${nodeValue}-->\n`).join("");
  return `<!doctype html>\n${page.documentElement.outerHTML}\n${after}`;
}
