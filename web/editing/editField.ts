import type { Draft, Drafts } from "../../shared/job/draft.ts";
import type { Job, Origin } from "../../shared/job/job.ts";
import { NEW_TITLE } from "../../shared/job/newTitle.ts";
import { atPath, keysOf, withPath } from "../../shared/job/path.ts";
import { checkJob } from "./checkJob.ts";
import type { EditorState } from "./jobEditor.ts";
import { withPlacesFollowed } from "./placesFollowed.ts";
import { problemAt } from "./problemAt.ts";

const CAR_NAME = "vehicle.name";
const PLACE_NAME = /^supplies\.\d+\.name$/;

/** What is known of an edit besides its value. */
export interface About {
  /** The field's own words, for the undo. */
  readonly what: string;
  readonly from?: Origin["from"];
  readonly plusMinus_frac?: number;
}

/** The state after an edit; without `about` the origin is left alone. */
export function edited(before: EditorState, path: string, typed: string, value: unknown, about?: About): EditorState {
  const { [path]: _own, ...others } = before.drafts;
  // A text that is typed again means what it meant: the file may hold its value rounded.
  const isAgain = typed.trim() !== "" && before.job.origins[path]?.typed === typed;
  const meant = isAgain ? atPath(before.job, path) : value;
  const changed = about ? withField(before.job, path, typed, meant, about) : withPath(before.job, path, value);
  const called = path === CAR_NAME ? titled(changed, before.job) : changed;
  const alone = PLACE_NAME.test(path) ? withPlacesFollowed(called, before.job) : called;
  // Fields that contradict each other one at a time may fit together, so waiting drafts are tried with this one: all of them, and where
  // another group's is at fault by itself, those of the same group.
  const waiting = Object.entries(others).filter(([, draft]) => draft.value !== undefined);
  const group = keysOf(path)[0];
  const beside = waiting.filter(([at]) => keysOf(at)[0] === group);
  for (const tried of beside.length < waiting.length ? [waiting, beside] : [waiting]) {
    if (tried.length === 0) continue;
    const together = tried.reduce((job, [at, draft]) => withField(job, at, draft.typed, draft.value), alone);
    const checked = checkJob(together, before.job);
    if (checked.ok) return { job: checked.job, drafts: without(others, tried) };
  }
  const checked = checkJob(alone, before.job);
  if (checked.ok) return { job: checked.job, drafts: others };
  const problem = problemAt(path, checked.problems);
  return { job: before.job, drafts: { ...others, [path]: { typed, problem, value } } };
}

/** The job called by its car, as long as it has no title of its own. */
function titled(changed: Job, { title, vehicle }: Job): Job {
  return title === NEW_TITLE || title === vehicle.name ? { ...changed, title: changed.vehicle.name } : changed;
}

/** The job with a value in a field and its origin noted beside it. */
function withField(job: Job, path: string, typed: string, value: unknown, about?: About): Job {
  const { [path]: known, ...others } = job.origins;
  if (value === undefined) return { ...withPath(job, path, undefined), origins: others };
  const origin: Origin = {
    // A number typed over a usual one is no longer the usual one; where it comes from only its owner can say.
    from: about?.from ?? (known && known.from !== "usual" ? known.from : "typed"),
    ...(typed.trim() !== "" && { typed: typed.slice(0, 200) }),
    ...(about?.plusMinus_frac !== undefined && { plusMinus_frac: about.plusMinus_frac }),
    ...(known?.note !== undefined && { note: known.note }),
  };
  return { ...withPath(job, path, value), origins: { ...job.origins, [path]: origin } };
}

function without(drafts: Drafts, taken: readonly (readonly [string, Draft])[]): Drafts {
  const gone = new Set(taken.map(([path]) => path));
  return Object.fromEntries(Object.entries(drafts).filter(([path]) => !gone.has(path)));
}
