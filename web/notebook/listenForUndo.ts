import type { JobEditor } from "../editing/jobEditor.ts";

/** Ctrl+Z and its kin, left to the browser while a field holds letters that are not in the job yet. */
export function listenForUndo(jobEditor: JobEditor, announce: (words: string) => void): void {
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || jobEditor.typing.value !== undefined) return;
    const key = event.key.toLowerCase();
    const isRedo = key === "y" || (key === "z" && event.shiftKey);
    if (key !== "z" && !isRedo) return;
    event.preventDefault();
    if (jobEditor.isLooking.value) {
      announce("An earlier version is only looked at: there is nothing to undo in it.");
      return;
    }
    const what = isRedo ? jobEditor.redo() : jobEditor.undo();
    announce(what === undefined ? "Nothing to undo." : `${isRedo ? "Redone" : "Undone"}: ${what}.`);
  });
}
