/** What happens while files are dragged over the page and when one is dropped. */
export interface DropListeners {
  onOver(isOver: boolean): void;
  /** Every file that was dropped, in the order of the drop. */
  onFiles(files: readonly File[]): void;
}

/**
 * Takes files dropped anywhere on `target`. Without it the browser would leave the page for the file. Other things
 * dragged (text into a field) are left to the browser. Call what comes back to stop.
 */
export function acceptDroppedFiles(target: HTMLElement, { onOver, onFiles }: DropListeners): () => void {
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  const onDragOver = (event: DragEvent) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    onOver(true);
  };
  const onDragLeave = (event: DragEvent) => {
    // Leaving one element of the page for another is no leaving.
    if (!(event.relatedTarget instanceof Node && target.contains(event.relatedTarget))) onOver(false);
  };
  const onDrop = (event: DragEvent) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    onOver(false);
    onFiles(Array.from(event.dataTransfer?.files ?? []));
  };
  target.addEventListener("dragover", onDragOver);
  target.addEventListener("dragleave", onDragLeave);
  target.addEventListener("drop", onDrop);
  return () => {
    target.removeEventListener("dragover", onDragOver);
    target.removeEventListener("dragleave", onDragLeave);
    target.removeEventListener("drop", onDrop);
  };
}
