/** The page's worker, whose script is a file beside the page's. */
export function pageWorker(name: string): Worker {
  return new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name });
}
