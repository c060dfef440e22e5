/** Takes files that are dropped anywhere on the page, instead of leaving the page for them. */
export function takeDroppedFiles(open: (files: readonly File[]) => void): void {
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    if (files.length === 0) return;
    event.preventDefault();
    open(files);
  });
}
