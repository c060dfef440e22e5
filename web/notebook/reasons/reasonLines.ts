import type { Job, Origin } from "../../../shared/job/job.ts";
import { atPath } from "../../../shared/job/path.ts";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { knownField } from "../../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../../editing/fieldTable/writeAtPath.ts";
import { originWords } from "../../fields/originChoice.ts";
import { type ToldGroup, toldGroups } from "./toldGroups.ts";

/** One value of the job that a result hangs on. */
export interface ReasonLine {
  readonly path: string;
  readonly label: string;
  /** Whether the page has a field for it, which its label leads to. */
  readonly hasField: boolean;
  /** The value with its unit, for a single number; a table or a list in short. */
  readonly value?: string;
  /** Where it comes from, in words. */
  readonly from: string;
  /** Usual or guessed: nobody measured it. */
  readonly isOpen: boolean;
}

/**
 * The values of a job at paths such as `motor.loss`, in the reader's units, with where each comes from. `pack` at the head of a
 * path is the pack spoken of, `road` the road driven; what the job does not have is left out.
 */
export function reasonLines(job: Job, paths: readonly string[], units: UnitHabit, packIndex = 0): ReasonLine[] {
  const found = paths.flatMap((path): ReasonLine[] => {
    const group = toldGroups[path];
    if (group) return groupLine(job, path, group, units, packIndex);
    return valuesBelow(job, path.replace(/^pack\./, `packs.${packIndex}.`)).map((each) => valueLine(job, each, units));
  });
  return found.filter(({ path }, i) => found.findIndex((other) => other.path === path) === i);
}

function groupLine(job: Job, path: string, group: ToldGroup, units: UnitHabit, packIndex: number): ReasonLine[] {
  const value = group.format(job, units, packIndex);
  if (value === undefined) return [];
  return [{ path, label: group.label, hasField: false, value, ...groupOrigin(job, path) }];
}

function valueLine(job: Job, path: string, units: UnitHabit): ReasonLine {
  const field = knownField(path);
  const value = atPath(job, path);
  const written =
    typeof value === "number"
      ? writeAtPath(path, value, units)
      : typeof value === "boolean"
        ? value
          ? "yes"
          : "no"
        : field?.type === "choice"
          ? field.choices[String(value)]
          : undefined;
  return {
    path,
    label: inReadersUnits(field?.label ?? path, units),
    hasField: field !== undefined,
    ...(written !== undefined && { value: written }),
    ...originOf(job, path),
  };
}

/** Paths of the values at or below a path: numbers and yes or no; none of a list, which is written in short or not at all. */
function valuesBelow(job: Job, path: string): string[] {
  const value = atPath(job, path);
  if (typeof value !== "object" || value === null) return value === undefined ? [] : [path];
  if (Array.isArray(value)) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    typeof each === "number" || typeof each === "boolean" ? [`${path}.${key}`] : [],
  );
}

type NotedOrigin = Pick<ReasonLine, "from" | "isOpen">;

/** Where a value comes from: as noted at its path or above it; else its part's own word, the usual value, or nothing noted. */
function originOf(job: Job, path: string): NotedOrigin {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf(".")))) {
    const origin = job.origins[at];
    if (origin) return notedOrigin(origin);
  }
  const field = knownField(path);
  if (field?.type === "quantity" && field.usual?.value === atPath(job, path))
    return { from: originWords.usual, isOpen: true };
  if ((field?.type === "quantity" && field.isChosen) || field?.type === "choice" || field?.type === "yesNo")
    return { from: "chosen", isOpen: false };
  return { from: partOrigin(job, path) ?? "origin not noted", isOpen: false };
}

/** Of a group: what is noted of the whole, or of all in it alike; else of which in it something is noted. */
function groupOrigin(job: Job, path: string): NotedOrigin {
  const [above, key] = path.split(".*.");
  const whole = job.origins[above];
  if (whole) return notedOrigin(whole);
  const below = Object.entries(job.origins).filter(
    ([at]) => at.startsWith(`${above}.`) && (key === undefined || at.endsWith(`.${key}`)),
  );
  const list = atPath(job, above);
  const count = Array.isArray(list) ? list.length : 0;
  if (below.length === 0)
    return { from: partOrigin(job, path) ?? groupWords[path] ?? "origin not noted", isOpen: false };
  const isOpen = below.some(([, { from }]) => from === "usual" || from === "guessed");
  const words = below.map(([at, { from }]) => `${placeOf(at, above)} ${originWords[from]}`);
  const others = count > below.length ? "; the others not noted" : "";
  return { from: `${words.join(", ")}${others}`, isOpen };
}

/** Of groups that are no facts of the car. */
const groupWords: Readonly<Record<string, string>> = {
  road: "chosen",
  "pack.layout": "chosen",
  "environment.gravity_mps2": "as the job has it",
};

/** `no. 3` for `driveline.gears.2.gear_ratio`; a key otherwise is not named. */
function placeOf(at: string, above: string): string {
  const place = Number(at.slice(above.length + 1).split(".")[0]);
  return Number.isInteger(place) ? `no. ${place + 1}` : "";
}

/** The word of a motor or module about where its figures come from. */
function partOrigin({ motor, module }: Job, path: string): string | undefined {
  if (path.startsWith("motor.")) return `motor: ${motor.origin}`;
  return path.startsWith("module.") ? `module: ${module.origin}` : undefined;
}

function notedOrigin({ from }: Origin): NotedOrigin {
  return { from: originWords[from], isOpen: from === "usual" || from === "guessed" };
}
