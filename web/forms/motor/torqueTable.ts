import type { TemplateResult } from "lit-html";
import { atPath } from "../../../shared/job/path.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";

/** A torque over its speed in the job: a group with the lists `speed_rpm` and `torque_Nm`, of one length. */
export interface TorqueTable {
  /** Of the group: `engine.curve`. */
  readonly path: string;
  readonly caption: string;
  readonly most: number;
}

/** A curve of torque as a table: a row each point, which may be pasted from a spreadsheet. Two points stay at least. */
export function torqueTable(form: Form, { path, caption, most }: TorqueTable): TemplateResult {
  const lists = [`${path}.speed_rpm`, `${path}.torque_Nm`];
  return listTable(form, {
    path,
    isByColumn: true,
    caption,
    entry: "point",
    rowName: (i) => `point ${i + 1}`,
    columns: [
      { key: "speed_rpm", head: "Speed" },
      { key: "torque_Nm", head: "Torque" },
    ],
    most,
    least: 2,
    add: (state) => withNextPoint(state, path),
    remove: (state, i) => lists.reduce((at, list) => withoutEntry(at, list, i), state),
  });
}

/** The state with a point more at the end: as far from the last as that is from the one before, at the same torque. */
function withNextPoint(state: EditorState, path: string): EditorState {
  const [speeds, torques] = ["speed_rpm", "torque_Nm"].map((key) => {
    const list = atPath(state.job, `${path}.${key}`);
    if (!Array.isArray(list)) throw new Error(`no list ${key} at ${path}`);
    return list.map(Number);
  });
  const count = speeds.length;
  const next_rpm = 2 * speeds[count - 1] - speeds[count - 2];
  const longer = withEntry(state, `${path}.speed_rpm`, count, next_rpm);
  return withEntry(longer, `${path}.torque_Nm`, count, torques[count - 1]);
}
