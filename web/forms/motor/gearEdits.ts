import type { Job } from "../../../shared/job/job.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";

type Driveline = Job["driveline"];
type Shifting = Driveline["shifting"];

const PATH = "driveline.gears";
/** Names of the gears in their order, as handbooks count them. */
const counted = ["first", "second", "third", "fourth", "fifth", "sixth"];
/** A next gear's ratio over the one before where nobody has counted teeth yet: assumed. */
const NEXT_ratio = 0.75;

/** The state with one gear more behind the last; its ratio is a guess from the last one's. */
export function withGear(state: EditorState): EditorState {
  const { gears } = state.job.driveline;
  const last = gears[gears.length - 1];
  const gear_ratio = Math.max(0.4, Number((last.gear_ratio * NEXT_ratio).toPrecision(3)));
  const gear = { name: nextName(gears), gear_ratio, efficiency_frac: last.efficiency_frac };
  const longer = withEntry(state, PATH, gears.length, gear);
  const origin = { from: "guessed" as const, note: "three quarters of the gear below, until its teeth are counted" };
  const origins = { ...longer.job.origins, [`${PATH}.${gears.length}.gear_ratio`]: origin };
  return { ...longer, job: { ...longer.job, origins } };
}

/** The state without a gear. Where it was in use the others go on; a single one in use is followed by its neighbour. */
export function withoutGear(state: EditorState, index: number): EditorState {
  const { gears, shifting } = state.job.driveline;
  const { name } = gears[index];
  const neighbour = gears[index + 1] ?? gears[index - 1];
  const shorter = withoutEntry(state, PATH, index);
  return withShifting(shorter, withoutName(shifting, name, neighbour.name));
}

/** The state with a gear called by another name, in the gears used as well. */
export function withGearName(state: EditorState, index: number, name: string): EditorState {
  const { gears, shifting } = state.job.driveline;
  const before = gears[index].name;
  const renamed = gears.map((gear, i) => (i === index ? { ...gear, name } : gear));
  const nameNow = (each: string) => (each === before ? name : each);
  const next: Shifting =
    shifting.kind === "fixed"
      ? { ...shifting, gear: nameNow(shifting.gear) }
      : { ...shifting, gears: shifting.gears.map(nameNow) };
  const { [`${PATH}.${index}.name`]: _draft, ...drafts } = state.drafts;
  return withShifting({ job: { ...state.job, driveline: { ...state.job.driveline, gears: renamed } }, drafts }, next);
}

function withoutName(shifting: Shifting, name: string, neighbour: string): Shifting {
  if (shifting.kind === "fixed") return shifting.gear === name ? { kind: "fixed", gear: neighbour } : shifting;
  const at = shifting.gears.indexOf(name);
  if (at < 0) return shifting;
  const gears = shifting.gears.toSpliced(at, 1);
  if (gears.length === 0) return { kind: "fixed", gear: neighbour };
  if (gears.length === 1) return { kind: "fixed", gear: gears[0] };
  // The change into the gear that went goes with it; of the lowest gear, the change out of it.
  return { ...shifting, gears, up_kmh: shifting.up_kmh.toSpliced(Math.max(0, at - 1), 1) };
}

function withShifting(state: EditorState, shifting: Shifting): EditorState {
  return { ...state, job: { ...state.job, driveline: { ...state.job.driveline, shifting } } };
}

function nextName(gears: Driveline["gears"]): string {
  const taken = gears.map(({ name }) => name);
  const next = [counted[gears.length], ...counted, "overdrive", "one more"].find(
    (name) => name !== undefined && !taken.includes(name),
  );
  return next ?? `gear ${gears.length + 1}`;
}
