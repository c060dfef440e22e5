import { JSDOM } from "jsdom";
import { afterEach, expect, it, vi } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { listenForUndo } from "../../../web/notebook/listenForUndo.ts";
import { inventedJob } from "../../support/inventedJob.ts";

afterEach(() => vi.unstubAllGlobals());

/** A job whose title was changed once, with keys to press and what was announced. */
function listening() {
  const { window } = new JSDOM("");
  vi.stubGlobal("addEventListener", window.addEventListener.bind(window));
  const editor = createJobEditor({ job: inventedJob("Before"), drafts: {} });
  editor.change("title", (state) => ({ ...state, job: { ...state.job, title: "After" } }));
  const said: string[] = [];
  listenForUndo(editor, (words) => said.push(words));
  const press = (key: string, held: KeyboardEventInit = { ctrlKey: true }) => {
    const event = new window.KeyboardEvent("keydown", { key, cancelable: true, ...held });
    window.dispatchEvent(event);
    return event.defaultPrevented;
  };
  return { editor, said, press };
}

it("undoes and does again by their keys, and says which change that was", () => {
  const { editor, said, press } = listening();
  expect(press("z")).toBe(true);
  expect(editor.job.value.title).toBe("Before");
  expect(press("Z", { metaKey: true, shiftKey: true })).toBe(true);
  expect(editor.job.value.title).toBe("After");
  press("z");
  press("y");
  expect(editor.job.value.title).toBe("After");
  press("z");
  press("z");
  expect(said).toEqual([
    "Undone: title.",
    "Redone: title.",
    "Undone: title.",
    "Redone: title.",
    "Undone: title.",
    "Nothing to undo.",
  ]);
});

it("leaves other keys, and letters that are not in the job yet, to the browser", () => {
  const { editor, said, press } = listening();
  expect([press("z", {}), press("x"), press("z", { ctrlKey: true, altKey: true })]).toEqual([false, false, false]);
  editor.typing.value = { path: "title", text: "Aft" };
  expect(press("z")).toBe(false);
  expect(editor.job.value.title).toBe("After");
  expect(said).toEqual([]);
});
