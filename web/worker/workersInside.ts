// Takes the place of workersBeside.ts where the notebook is built as one file: nothing lies beside a page that was sent over,
// and a page opened from disk may not start a worker from a file anyway. The script is text inside the page.
import PageWorker from "./worker.ts?worker&inline";

/** The page's worker. */
export function pageWorker(name: string): Worker {
  return new PageWorker({ name });
}
