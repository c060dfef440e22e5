import type { Job } from "../../shared/job/job.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { labelOf } from "../inputs/fieldAt.ts";
import { originWords } from "../inputs/originChoice.ts";
import { writeAtPath } from "../inputs/writeAtPath.ts";
import { atPath } from "./atPath.ts";

/** One value of the job that a result hangs on. */
export interface ReasonLine {
  readonly path: string;
  readonly label: string;
  /** Whether the page has a field for it, which its label leads to. */
  readonly hasField: boolean;
  /** The value with its unit, for a single number. */
  readonly value?: string;
  /** Where it comes from, in words, where it is noted. */
  readonly from?: string;
  /** Usual or guessed: nobody measured it. */
  readonly isOpen: boolean;
}

/** The values of a job at paths such as `motor.loss`, in the reader's units, with where each comes from. */
export function reasonLines(job: Job, paths: readonly string[], units: UnitHabit): ReasonLine[] {
  return paths
    .flatMap((path) => valuesBelow(job, path))
    .map((path) => {
      const value = atPath(job, path);
      const origin = job.origins[path];
      const label = groups[path] ?? labelOf(path);
      return {
        path,
        label,
        hasField: label !== path && groups[path] === undefined,
        ...(typeof value === "number" && { value: writeAtPath(path, value, units) }),
        ...(origin && { from: originWords[origin.from] }),
        isOpen: origin?.from === "usual" || origin?.from === "guessed",
      };
    });
}

/** Long tables and lists are not told number by number. */
const TOLD_AT_MOST = 8;

/** Paths of the numbers at or below a path; the path itself where they are a table. */
function valuesBelow(job: Job, path: string): string[] {
  const value = atPath(job, path);
  if (typeof value !== "object" || value === null) return value === undefined ? [] : [path];
  const numbers = Object.entries(value).filter(([, each]) => typeof each === "number");
  if (Array.isArray(value) || numbers.length === 0 || numbers.length > TOLD_AT_MOST) return [path];
  return numbers.map(([key]) => `${path}.${key}`);
}

const groups: Readonly<Record<string, string>> = {
  packs: "the layout of each pack",
  accessories: "the accessories",
  controller: "the controller's limits",
  "controller.regen": "the limits of regenerative braking",
  "driveline.gears": "the ratios and efficiencies of the gears",
  "driveline.limits": "what the old driveline stands",
  "motor.loss": "the losses of motor and controller",
  "motor.envelope": "the motor's torque and power",
  "module.openCircuit": "the open-circuit curve of the cells",
  "module.resistance": "the resistance of a module",
  "module.discharge": "the discharge limits of a module",
  "module.charge": "the charge limits of a module",
};
