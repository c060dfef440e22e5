import type { Pack } from "../../../shared/job/schema/battery.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry } from "../../editing/listEdits.ts";

/** The state with a pack more to compare, at the end and under a name of its own. */
export function newCandidate(state: EditorState, pack: Pack): EditorState {
  const { packs } = state.job;
  const taken = packs.map(({ name }) => name);
  let name = pack.name;
  for (let number = 2; taken.includes(name); number++) name = `${pack.name}, ${number}`;
  return withEntry(state, "packs", packs.length, { ...pack, name });
}
